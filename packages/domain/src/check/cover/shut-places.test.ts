import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { point } from '../../geometry'
import { metres, metresPerSecond, metresPerSecondSquared, millisecondsOf, seconds } from '../../quantities'
import { rollOn } from '../ball-played'
import { DEFAULT_LIMITS } from '../limits'
import { opponentMargin } from '../notes/lane-closed'
import { AGE_PROFILES, type AgeProfile, PROFILE_IDS } from '../profiles'
import type { TimedStep } from '../timed-step'
import { shutsFrom } from './shut-places'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const placeArbitrary = fc.record({ x: number(-30, 30), y: number(-30, 30) }).map(({ x, y }) => point(x, y))

/** Profiles of the table, and some with a reach, speed or reaction no child has. */
const opponentArbitrary: fc.Arbitrary<AgeProfile> = fc
  .record({
    of: fc.constantFrom(...PROFILE_IDS),
    reach: number(0, 1.5),
    reaction: number(0, 1.2),
    speed: number(1, 12),
    own: fc.boolean(),
  })
  .map(({ of, reach, reaction, speed, own }) => {
    const profile = AGE_PROFILES[of]
    if (!own) return profile
    return {
      ...profile,
      reach: { ...profile.reach, value: metres(reach) },
      reaction: { ...profile.reaction, value: seconds(reaction) },
      topSpeed: { ...profile.topSpeed, value: metresPerSecond(speed) },
    }
  })

const rollingArbitrary: fc.Arbitrary<TimedStep> = fc
  .record({
    from: placeArbitrary,
    to: placeArbitrary,
    speed: number(0.5, 16),
    slowing: number(0.3, 2.5),
    at: fc.boolean(),
  })
  .map(({ from, to: other, speed, slowing, at }) => {
    const to = at ? other : point(from.x, from.y)
    const length = metres(Math.hypot(to.x - from.x, to.y - from.y))
    const ball = { releaseSpeed: metresPerSecond(speed), deceleration: metresPerSecondSquared(slowing) }
    return { ...stepAt(from, to), ...rollOn(ball, length) }
  })

function stepAt(from: TimedStep['from'], to: TimedStep['to']): TimedStep {
  return {
    stepId: 's1',
    kind: 'pass',
    actor: 'CM',
    receiver: 'RW',
    startsAt: seconds(0),
    from,
    to,
    flight: { kind: 'carried' },
    ballArrivesAt: seconds(1),
    receiverArrivesAt: seconds(1),
    receivedAt: seconds(1),
    shortBy: metres(0),
  }
}

function shutByTheNotes(opponents: AgeProfile, step: TimedStep, at: ReturnType<typeof point>): boolean {
  const margin = opponentMargin({ profile: opponents }, step, at)
  return margin !== null && millisecondsOf(margin) < millisecondsOf(DEFAULT_LIMITS.laneMarginSeconds.value)
}

describe('the quick answer', () => {
  test('on a rolling ball is that of the margin over the whole lane, wherever the X stands', () => {
    fc.assert(
      fc.property(rollingArbitrary, opponentArbitrary, placeArbitrary, (step, opponents, at) => {
        const quick = shutsFrom(step, { opponents, limits: DEFAULT_LIMITS })
        expect(quick(at)).toBe(shutByTheNotes(opponents, step, at))
      }),
      { numRuns: 2000 },
    )
  })

  test('and that on both sides of where shut turns into open, to a hundredth of a millimetre', () => {
    let turns = 0
    fc.assert(
      fc.property(rollingArbitrary, opponentArbitrary, placeArbitrary, (step, opponents, far) => {
        const quick = shutsFrom(step, { opponents, limits: DEFAULT_LIMITS })
        const on = (share: number) =>
          point(step.to.x + (far.x - step.to.x) * share, step.to.y + (far.y - step.to.y) * share)
        let shut = 0
        let open = 1
        if (!shutByTheNotes(opponents, step, on(shut)) || shutByTheNotes(opponents, step, on(open))) return
        turns += 1
        while (Math.hypot(far.x - step.to.x, far.y - step.to.y) * (open - shut) > 1e-5) {
          const middle = (shut + open) / 2
          if (shutByTheNotes(opponents, step, on(middle))) shut = middle
          else open = middle
          expect(quick(on(middle))).toBe(shutByTheNotes(opponents, step, on(middle)))
        }
      }),
      { numRuns: 300 },
    )
    expect(turns).toBeGreaterThan(20)
  })

  test('on a ball in the air is that of where it comes down', () => {
    fc.assert(
      fc.property(placeArbitrary, placeArbitrary, opponentArbitrary, placeArbitrary, (from, to, opponents, at) => {
        const step: TimedStep = { ...stepAt(from, to), flight: { kind: 'flies', duration: seconds(1.5) } }
        const quick = shutsFrom(step, { opponents, limits: DEFAULT_LIMITS })
        expect(quick(at)).toBe(shutByTheNotes(opponents, step, at))
      }),
    )
  })
})

describe('a carry of five metres', () => {
  const carry = stepAt(point(10, 0), point(15, 0))
  const shuts = shutsFrom(carry, { opponents: AGE_PROFILES.U10, limits: DEFAULT_LIMITS })

  test.each([
    ['in the way', point(12, 0), true],
    ['beyond its end, nearer to it than the player', point(19.9, 0), true],
    ['beyond its end, further from it than the player', point(20.1, 0), false],
    ['less than a step beside the start', point(10, 0.9), true],
    ['more than a step beside the start', point(10, 1.1), false],
    ['behind the player', point(8.9, 0), false],
  ] as const)('is shut, or not, by an X %s', (_, at, isShut) => {
    expect(shuts(at)).toBe(isShut)
  })
})
