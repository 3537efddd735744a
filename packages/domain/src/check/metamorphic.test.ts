import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { distance, type Point, point } from '../geometry'
import { checkShape, mirrorPattern, type PatternDocument } from '../pattern'
import { spotArbitrary } from '../pattern/fixtures/arbitrary-pattern'
import { opponentAt } from '../pattern/fixtures/sample-pattern'
import { mirrorPoint, nominalSpace } from '../pitch'
import { metres, metresPerSecond, seconds } from '../quantities'
import { rollBall, rollOn } from './ball-played'
import { checkPattern } from './check-pattern'
import { EVERYTHING, widePatternArbitrary } from './fixtures/wide-pattern'
import { laneMarginBetween } from './lane'
import { opponentMargin } from './notes/lane-closed'
import { type Setting, settingOf } from './play-step'
import { AGE_PROFILES, profileFor } from './profiles'
import { BALL_DECELERATION, SURFACES } from './surfaces'
import type { TimedStep } from './timed-step'
import { playerAt, playStates, timelineAfter, timelineOf } from './timeline'

const space = nominalSpace('us-7v7')
const RUNS = { numRuns: 60 }

const timelineFor = (document: PatternDocument) => timelineOf(document, space, profileFor(document.ageGroup), 'normal')

test('the patterns drawn here are valid, and among them is every kind of action and restart', () => {
  const kinds = new Set<string>()
  fc.assert(
    fc.property(widePatternArbitrary, (document) => {
      expect(checkShape(document)).toEqual([])
      for (const { action } of document.steps) kinds.add(action.kind)
      kinds.add(document.restart)
    }),
    { numRuns: 300 },
  )
  expect([...kinds].sort()).toEqual(
    [
      ...['carry', 'dribble-past', 'dummy', 'free-kick', 'goal-kick', 'goalkeeper-hands', 'open-play'],
      ...['pass', 'roll', 'set-back', 'shot', 'throw', 'throw-in'],
    ].sort(),
  )
})

describe('lanes', { timeout: 60_000 }, () => {
  const marginsOf = (document: PatternDocument, profile = profileFor(document.ageGroup)) => {
    const setting = settingOf(document, space, profile, 'normal')
    const opponents = document.obstacles.map((each) => setting.place(each.spot))
    return (step: TimedStep) =>
      opponents.flatMap((at) => {
        const margin = opponentMargin({ profile }, step, at)
        return margin === null ? [] : [margin]
      })
  }

  test('one more X at rest never raises a margin', () => {
    fc.assert(
      fc.property(widePatternArbitrary, spotArbitrary, (document, spot) => {
        const more = { ...document, obstacles: [...document.obstacles, opponentAt('x9', spot)] }
        const [few, many] = [marginsOf(document), marginsOf(more)]
        // The players do not see opponents, so both patterns have the same steps.
        const { steps } = timelineFor(document)
        expect(timelineFor(more).steps).toEqual(steps)
        for (const step of steps) expect(Math.min(...many(step))).toBeLessThanOrEqual(Math.min(...few(step)))
      }),
      RUNS,
    )
  })

  // Precisely: of a ball already played, so with the same steps. An opponent who reacts later by Δ is later by Δ everywhere
  // along the lane, so the smallest margin grows by Δ, and a lane that was open (margin above nought) stays open. Of a whole
  // check this is not claimed: there the own players react later as well.
  test('a longer reaction of the opponent lifts every margin by as much: what went through is never hit', () => {
    fc.assert(
      fc.property(widePatternArbitrary, fc.double({ min: 0, max: 2, noNaN: true }), (document, more) => {
        const profile = profileFor(document.ageGroup)
        const reaction = { ...profile.reaction, value: seconds(profile.reaction.value + more) }
        const [quick, slow] = [marginsOf(document), marginsOf(document, { ...profile, reaction })]
        for (const step of timelineFor(document).steps) {
          const after = slow(step)
          for (const [index, margin] of quick(step).entries()) expect(after[index]).toBeCloseTo(margin + more, 9)
        }
      }),
      RUNS,
    )
  })

  test('a faster opponent and a longer leg never raise a margin', () => {
    fc.assert(
      fc.property(
        widePatternArbitrary,
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (document, faster, longer) => {
          const profile = profileFor(document.ageGroup)
          const able = {
            ...profile,
            topSpeed: { ...profile.topSpeed, value: metresPerSecond(profile.topSpeed.value + faster) },
            reach: { ...profile.reach, value: metres(profile.reach.value + longer) },
          }
          const [plain, stronger] = [marginsOf(document), marginsOf(document, able)]
          for (const step of timelineFor(document).steps) {
            const after = stronger(step)
            for (const [index, margin] of plain(step).entries()) expect(after[index]).toBeLessThanOrEqual(margin + 1e-9)
          }
        },
      ),
      RUNS,
    )
  })

  const place = fc
    .tuple(fc.integer({ min: -30_000, max: 30_000 }), fc.integer({ min: -30_000, max: 30_000 }))
    .map(([x, y]) => point(x / 1000, y / 1000))

  test('moved and turned as a whole, a lane keeps its margin', () => {
    fc.assert(
      fc.property(place, place, place, place, angle(), (from, to, at, shift, turn) => {
        fc.pre(distance(from, to) > 0.5)
        const ball = { releaseSpeed: metresPerSecond(9), deceleration: BALL_DECELERATION.normal.value }
        const opponent = { speed: metresPerSecond(5), reaction: seconds(0.3), reach: metres(0.6) }
        const moved = (each: Point) => turned(each, turn, shift)
        const before = laneMarginBetween(from, to, ball, { ...opponent, at })
        const after = laneMarginBetween(moved(from), moved(to), ball, { ...opponent, at: moved(at) })
        expect(after.margin).toBeCloseTo(before.margin, 6)
      }),
    )
  })
})

describe('the whole pattern in time', { timeout: 60_000 }, () => {
  // Half a turn about the centre mark is the other half of the pitch: the same play towards the other goal.
  test.each([
    ['moved, as on the pitch next to this one', fc.constant(0), { x: 70, y: -45 }],
    ['turned by half, as in the other half', fc.constant(Math.PI), { x: 54.864, y: 0 }],
    ['turned by any angle, as on a pitch that lies otherwise', angle(), { x: -3, y: 12 }],
  ] as const)('%s, takes the same times and the same ways', (_, angles, shift) => {
    fc.assert(
      fc.property(widePatternArbitrary, angles, fc.double({ min: 0, max: 1, noNaN: true }), (document, turn, share) => {
        const setting = settingOf(document, space, profileFor(document.ageGroup), 'normal')
        const moved = (each: Point) => turned(each, turn, point(shift.x, shift.y))
        const elsewhere: Setting = {
          ...setting,
          place: (spot) => moved(setting.place(spot)),
          target: (targetId) => moved(setting.target(targetId)),
        }
        const here = timelineAfter(playStates(document, setting).at(-1)!)
        const there = timelineAfter(playStates(document, elsewhere).at(-1)!)
        fc.pre(!isOnTheEdge(here.steps, document, setting))
        expect(there.endsAt).toBeCloseTo(here.endsAt, 6)
        here.steps.forEach((step, index) => {
          expect(there.steps[index]!.ballArrivesAt).toBeCloseTo(step.ballArrivesAt, 6)
          expect(distance(there.steps[index]!.to, moved(step.to))).toBeLessThan(1e-6)
        })
        const at = seconds(here.endsAt * share)
        for (const { position } of document.positions) {
          expect(distance(playerAt(there, position, at), moved(playerAt(here, position, at)))).toBeLessThan(1e-4)
        }
      }),
      RUNS,
    )
  })

  test('mirrored is the mirror of it, with every action and restart', () => {
    fc.assert(
      fc.property(widePatternArbitrary, (document) => {
        const here = timelineFor(document)
        const there = timelineFor(mirrorPattern(document))
        expect(there.endsAt).toBe(here.endsAt)
        expect(there.steps.map((step) => step.to)).toEqual(here.steps.map((step) => mirrorPoint(step.to)))
      }),
      RUNS,
    )
  })
})

describe('a slower pass never arrives earlier', () => {
  const length = fc.double({ min: 0.1, max: 60, noNaN: true })
  const speed = fc.double({ min: 0.5, max: 25, noNaN: true })

  test('asked to arrive slower, on every floor', () => {
    fc.assert(
      fc.property(length, speed, speed, fc.constantFrom(...SURFACES), (way, one, other, surface) => {
        const deceleration = BALL_DECELERATION[surface].value
        const kick = AGE_PROFILES.U10.kickSpeedMax.value
        const slow = rollBall(metres(way), metresPerSecond(Math.min(one, other)), kick, deceleration)
        const fast = rollBall(metres(way), metresPerSecond(Math.max(one, other)), kick, deceleration)
        // One that cannot be kicked that far stops short of the place and does not arrive at all.
        fc.pre(slow.shortBy === 0 && fast.shortBy === 0)
        expect(slow.duration).toBeGreaterThanOrEqual(fast.duration - 1e-9)
      }),
    )
  })

  test('struck more softly, or on a slower floor', () => {
    fc.assert(
      fc.property(length, speed, speed, fc.nat({ max: SURFACES.length - 2 }), (way, one, other, floor) => {
        const on = (surface: (typeof SURFACES)[number], releaseSpeed: number) =>
          rollOn(
            { releaseSpeed: metresPerSecond(releaseSpeed), deceleration: BALL_DECELERATION[surface].value },
            metres(way),
          )
        const fast = on(SURFACES[floor]!, Math.max(one, other))
        const slow = on(SURFACES[floor + 1]!, Math.min(one, other))
        expect(slow.shortBy).toBeGreaterThanOrEqual(fast.shortBy - 1e-9)
        if (slow.shortBy === 0) expect(slow.duration).toBeGreaterThanOrEqual(fast.duration - 1e-9)
      }),
    )
  })
})

test('everybody in one place and nowhere to go is no NaN and no exception', () => {
  fc.assert(
    fc.property(widePatternArbitrary, spotArbitrary, (document, spot) => {
      const here: PatternDocument = {
        ...document,
        positions: document.positions.map((each) => ({ ...each, spot })),
        obstacles: document.obstacles.map((each) => ({ ...each, spot })),
        targets: document.targets.map((each) => ({ ...each, spot })),
        steps: document.steps.map((step) => ({ ...step, runs: step.runs.map((run) => ({ ...run, to: spot })) })),
      }
      for (const note of checkPattern(here, space, EVERYTHING).notes) {
        expect(Number.isFinite(note.value) && Number.isFinite(note.limit)).toBe(true)
      }
    }),
    RUNS,
  )
})

function angle(): fc.Arbitrary<number> {
  return fc.double({ min: 0, max: 2 * Math.PI, noNaN: true })
}

function turned(place: Point, turn: number, shift: Point): Point {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
  return point(place.x * cos - place.y * sin + shift.x, place.x * sin + place.y * cos + shift.y)
}

/**
 * A receiver exactly at the distance where no run is needed, or a run to where a player already goes, is decided on the last
 * bit of a place; turned, that bit may fall otherwise. Both are left out.
 */
function isOnTheEdge(steps: readonly TimedStep[], document: PatternDocument, setting: Setting): boolean {
  const spots = [
    ...document.positions.map((each) => each.spot),
    ...document.steps.flatMap((each) => each.runs.map((run) => run.to)),
  ]
  const places = spots.map((spot) => setting.place(spot))
  return steps.some((step) =>
    places.some((place) => {
      const away = distance(place, step.to)
      return Math.abs(away - 0.5) < 1e-6 || (away > 0 && away < 1e-6)
    }),
  )
}
