import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { distance } from '../geometry'
import { mirrorPattern, mirrorPosition, type PatternDocument, type Step } from '../pattern'
import { patternArbitrary } from '../pattern/fixtures/arbitrary-pattern'
import { passStep, samplePattern, spotAt } from '../pattern/fixtures/sample-pattern'
import { mirrorPoint, nominalSpace } from '../pitch'
import { metres, metresPerSecond, seconds } from '../quantities'
import { flightDuration, releaseSpeedFor, rollingDuration, rollingSpeed } from './ball'
import { AGE_PROFILES, type AgeProfile } from './profiles'
import { runDuration } from './runner'
import { BALL_DECELERATION } from './surfaces'
import { ballAt, playerAt, playersAt, type Timeline, timelineOf } from './timeline'

const space = nominalSpace('us-7v7')
const U10 = AGE_PROFILES.U10

function timed(document: PatternDocument, profile: AgeProfile = U10): Timeline {
  return timelineOf(document, space, profile, 'normal')
}

function withSteps(...steps: readonly Step[]): PatternDocument {
  return { ...samplePattern, steps, looks: [] }
}

const runner = { acceleration: U10.acceleration.value, topSpeed: U10.topSpeed.value }

describe('one step in time', () => {
  test('a pass to feet arrives at the speed this age can take, after the time a rolling ball needs', () => {
    const [step] = timed(withSteps(passStep('s1', 'GK', 'RCB'))).steps
    const length = distance(step!.from, step!.to)
    const deceleration = BALL_DECELERATION.normal.value
    const releaseSpeed = releaseSpeedFor(U10.arrivalSpeed.value, length, deceleration)
    expect(step!.startsAt).toBe(0)
    expect(step!.ballArrivesAt).toBeCloseTo(rollingDuration({ releaseSpeed, deceleration }, length)!, 12)
    expect(step!.receivedAt).toBe(step!.ballArrivesAt)
  })

  test('a pass never leaves the foot faster than the age can kick', () => {
    const weak: AgeProfile = { ...U10, kickSpeedMax: { ...U10.kickSpeedMax, value: metresPerSecond(5) } }
    const [step] = timed(withSteps(passStep('s1', 'GK', 'RCB')), weak).steps
    expect(step!.flight).toMatchObject({ kind: 'rolls', ball: { releaseSpeed: 5 } })
  })

  test('the next pass waits for a turn and a look in two touches, and hardly at all in one', () => {
    const second = passStep('s2', 'RCB', 'RW')
    const oneTouch = { ...second, action: { ...second.action, touches: 1 } as Step['action'] }
    const two = timed(withSteps(passStep('s1', 'GK', 'RCB'), second)).steps
    const one = timed(withSteps(passStep('s1', 'GK', 'RCB'), oneTouch)).steps
    expect(two[1]!.startsAt - two[0]!.receivedAt).toBeCloseTo(U10.receiveTurnLook.value, 12)
    expect(one[1]!.startsAt - one[0]!.receivedAt).toBeCloseTo(U10.oneTouch.value, 12)
  })

  test('a ball in the air takes the time of a flight at 45 degrees', () => {
    const action: Step['action'] = {
      kind: 'pass',
      from: 'GK',
      to: 'RCB',
      into: { kind: 'feet' },
      height: 'air',
      touches: 2,
      foot: 'either',
    }
    const [step] = timed(withSteps({ stepId: 's1', action, runs: [], point: '' })).steps
    expect(step!.ballArrivesAt).toBeCloseTo(flightDuration(distance(step!.from, step!.to)), 12)
  })

  test('a carried ball goes with its player, slower than a run without it', () => {
    const carry: Step = {
      stepId: 's1',
      action: { kind: 'carry', by: 'GK', to: spotAt('penalty-arc-top'), at: null },
      runs: [],
      point: '',
    }
    const timeline = timed(withSteps(carry))
    const [step] = timeline.steps
    expect(step!.ballArrivesAt).toBeGreaterThan(runDuration(runner, distance(step!.from, step!.to)))
    const half = seconds(step!.ballArrivesAt / 2)
    expect(ballAt(timeline, half)).toEqual({ point: playerAt(timeline, 'GK', half), holder: 'GK' })
  })

  test('a ball let through keeps rolling: nobody touches it on the way', () => {
    const dummy: Step = { stepId: 's2', action: { kind: 'dummy', by: 'CM', to: 'ST' }, runs: [], point: '' }
    const [first, second] = timed(withSteps(passStep('s1', 'GK', 'CM'), dummy)).steps
    expect(second!.startsAt).toBe(first!.ballArrivesAt)
    const whole = distance(first!.from, first!.to) + distance(second!.from, second!.to)
    expect(first!.flight.kind).toBe('rolls')
    if (first!.flight.kind !== 'rolls') return
    expect(second!.ballArrivesAt).toBeCloseTo(rollingDuration(first!.flight.ball, metres(whole))!, 9)
  })

  test('a receiver without a run of their own goes to the space the ball is played into, after a reaction', () => {
    const action: Step['action'] = {
      kind: 'pass',
      from: 'GK',
      to: 'CM',
      into: { kind: 'space', spot: spotAt('penalty-arc-top', 0, 8) },
      height: 'ground',
      touches: 2,
      foot: 'either',
    }
    const [step] = timed(withSteps({ stepId: 's1', action, runs: [], point: '' })).steps
    expect(step!.receiverArrivesAt).toBeCloseTo(U10.reaction.value + runDuration(runner, metres(8)), 9)
  })
})

test('a ball is let through when it comes by, however late the player who lets it is', () => {
  const action: Step['action'] = {
    kind: 'pass',
    from: 'GK',
    to: 'ST',
    into: { kind: 'space', spot: spotAt('penalty-mark') },
    height: 'ground',
    touches: 2,
    foot: 'either',
  }
  const dummy: Step = { stepId: 's2', action: { kind: 'dummy', by: 'ST', to: 'CM' }, runs: [], point: '' }
  const [first, second] = timed(withSteps({ stepId: 's1', action, runs: [], point: '' }, dummy)).steps
  expect(first!.receivedAt).toBeGreaterThan(first!.ballArrivesAt)
  expect(second!.startsAt).toBe(first!.ballArrivesAt)
})

test('a run that cuts another short begins where the player is by then', () => {
  const first: Step = {
    ...passStep('s1', 'GK', 'RCB'),
    runs: [{ position: 'ST', to: spotAt('penalty-area-top'), start: 'with-the-ball' }],
  }
  const second = passStep('s2', 'RCB', 'RW')
  const turn: Step = { ...second, runs: [{ position: 'ST', to: spotAt('centre-mark', 9), start: 'with-the-ball' }] }
  const uncut = timed(withSteps(first, second))
  const legs = timed(withSteps(first, turn)).tracks.find((track) => track.position === 'ST')!.legs
  expect(legs).toHaveLength(2)
  expect(legs[1]!.startsAt).toBeLessThan(legs[0]!.endsAt)
  expect(legs[1]!.from).toEqual(playerAt(uncut, 'ST', legs[1]!.startsAt))
})

describe('a run starts', () => {
  const to = spotAt('halfway-right', 0, -4)
  const startOf = (start: 'before-the-ball' | 'with-the-ball' | 'after-the-ball', position = 'ST') => {
    const steps = [passStep('s1', 'GK', 'RCB'), { ...passStep('s2', 'RCB', 'RW'), runs: [{ position, to, start }] }]
    const timeline = timed(withSteps(...steps))
    return { steps: timeline.steps, leg: timeline.tracks.find((track) => track.position === position)!.legs[0]! }
  }

  test('before the ball: a reaction after the step before was played', () => {
    const { steps, leg } = startOf('before-the-ball')
    expect(leg.startsAt).toBeCloseTo(steps[0]!.startsAt + U10.reaction.value, 12)
  })

  test('with the ball: a reaction after this ball is played', () => {
    const { steps, leg } = startOf('with-the-ball')
    expect(leg.startsAt).toBeCloseTo(steps[1]!.startsAt + U10.reaction.value, 12)
  })

  test('after the ball: a reaction after this ball arrives', () => {
    const { steps, leg } = startOf('after-the-ball')
    expect(leg.startsAt).toBeCloseTo(steps[1]!.ballArrivesAt + U10.reaction.value, 12)
  })

  test('at once for the player who plays the ball: they need no cue', () => {
    const { steps, leg } = startOf('with-the-ball', 'RCB')
    expect(leg.startsAt).toBe(steps[1]!.startsAt)
  })
})

describe('any pattern in time', { timeout: 60_000 }, () => {
  test('is finite, in order, and on the ball where a step begins and ends', () => {
    fc.assert(
      fc.property(patternArbitrary, (document) => {
        const timeline = timed(document)
        let before = 0
        for (const step of timeline.steps) {
          expect(Number.isFinite(step.receivedAt)).toBe(true)
          expect(step.startsAt).toBeGreaterThanOrEqual(before)
          expect(step.ballArrivesAt).toBeGreaterThanOrEqual(step.startsAt)
          expect(step.receivedAt).toBeGreaterThanOrEqual(step.ballArrivesAt)
          before = step.startsAt
          if (step.flight.kind !== 'carried' && step.ballArrivesAt > step.startsAt) {
            expect(distance(ballAt(timeline, step.startsAt)!.point, step.from)).toBeLessThan(1e-9)
          }
        }
        expect(timeline.endsAt).toBeGreaterThanOrEqual(before)
      }),
    )
  })

  test('never moves a player faster than the top speed of their age', () => {
    fc.assert(
      fc.property(patternArbitrary, fc.double({ min: 0, max: 1, noNaN: true }), (document, share) => {
        const timeline = timed(document)
        const at = timeline.endsAt * share
        const later = playersAt(timeline, seconds(at + 0.05))
        playersAt(timeline, seconds(at)).forEach((player, index) => {
          expect(distance(player.point, later[index]!.point)).toBeLessThanOrEqual(U10.topSpeed.value * 0.05 + 1e-9)
        })
      }),
    )
  })

  test('mirrored is the mirror of the result, to the last bit', () => {
    fc.assert(
      fc.property(patternArbitrary, fc.double({ min: 0, max: 1, noNaN: true }), (document, share) => {
        const timeline = timed(document)
        const mirrored = timed(mirrorPattern(document))
        expect(mirrored.endsAt).toBe(timeline.endsAt)
        const at = seconds(timeline.endsAt * share)
        const expected = playersAt(timeline, at).map(({ position, point }) => ({
          position: mirrorPosition(position),
          point: mirrorPoint(point),
        }))
        expect(playersAt(mirrored, at)).toEqual(expected)
        expect(ballAt(mirrored, at)?.point).toEqual(mirrorPoint(ballAt(timeline, at)!.point))
      }),
    )
  })

  test('is the same every time, and the document is left alone', () => {
    fc.assert(
      fc.property(patternArbitrary, (document) => {
        const copy = structuredClone(document)
        expect(timed(document)).toEqual(timed(copy))
        expect(document).toEqual(copy)
      }),
    )
  })

  test('has its first ball no earlier when the ball is asked to arrive slower', () => {
    fc.assert(
      fc.property(patternArbitrary, fc.double({ min: 0, max: 2, noNaN: true }), (document, less) => {
        const slower: AgeProfile = {
          ...U10,
          arrivalSpeed: { ...U10.arrivalSpeed, value: metresPerSecond(U10.arrivalSpeed.value - less) },
          arrivalSpeedIntoSpace: {
            ...U10.arrivalSpeedIntoSpace,
            value: metresPerSecond(U10.arrivalSpeedIntoSpace.value - less),
          },
        }
        const [first] = timed(document).steps
        const [later] = timed(document, slower).steps
        fc.pre(first!.shortBy === 0 && later!.shortBy === 0)
        expect(later!.ballArrivesAt).toBeGreaterThanOrEqual(first!.ballArrivesAt - 1e-12)
      }),
    )
  })
})

test('a ball that is let through is struck for where its receiver runs to, not for where they stand', () => {
  const near = spotAt('centre-mark', -4)
  const dummy: Step = {
    stepId: 's2',
    action: { kind: 'dummy', by: 'CM', to: 'ST' },
    runs: [{ position: 'ST', to: near, start: 'with-the-ball' }],
    point: '',
  }
  const [first, second] = timed(withSteps(passStep('s1', 'GK', 'CM'), dummy)).steps
  if (first!.flight.kind !== 'rolls') throw new Error('a pass along the ground rolls')
  const whole = distance(first!.from, first!.to) + distance(second!.from, second!.to)
  expect(second!.to.x).toBeCloseTo(27.432 - 4, 6)
  expect(rollingSpeed(first!.flight.ball, metres(whole))).toBeCloseTo(U10.arrivalSpeed.value, 9)
})

test('the ball is the receiver’s from the moment it arrives, and nobody’s before', () => {
  const timeline = timed(withSteps(passStep('s1', 'GK', 'RCB')))
  const [step] = timeline.steps
  expect(ballAt(timeline, step!.ballArrivesAt)).toEqual({ point: step!.to, holder: 'RCB' })
  expect(ballAt(timeline, seconds(step!.ballArrivesAt - 0.001))?.holder).toBeNull()
})

test('a pattern without steps has its players, no ball and no duration', () => {
  const timeline = timed(withSteps())
  expect(timeline.endsAt).toBe(0)
  expect(ballAt(timeline, seconds(0))).toBeNull()
  expect(playersAt(timeline, seconds(5))).toHaveLength(samplePattern.positions.length)
})
