import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { FORMAT_IDS } from '../formats'
import { add, containsPoint, containsRectangle, distance, type Point, point } from '../geometry'
import { millimetres } from '../quantities'
import { pointOnCircle } from './clip'
import { landmarkPoint } from './landmark'
import { landmarksFound } from './landmarks-found'
import { spaceRectangle } from './measures'
import { mirrorLandmark, mirrorPoint, mirrorSpot } from './mirror'
import type { PitchMarking } from './pitch-marking'
import { pitchMarkings } from './pitch-markings'
import { gateAt } from './place-spots'
import { FINDINGS, type GoalFound, MARKINGS, type Space } from './space'
import { LANDMARKS, type Spot } from './spot'
import { nearestSpot, spotPoint } from './spot-point'

const length = (min: number, max: number) => fc.integer({ min, max }).map(millimetres)
const finding = fc.constantFrom(...FINDINGS)
const markings = fc
  .tuple(...MARKINGS.map((marking) => finding.map((found) => [marking, found] as const)))
  .map((entries) => Object.fromEntries(entries) as Space['markings'])
const goal = (end: 'own' | 'far') =>
  fc.option(fc.record<GoalFound>({ end: fc.constant(end), widthMm: length(900, 7400), movable: fc.boolean() }))

/** Any rectangle a coach may find: from 4 by 4 m to a full pitch, wider than long as often as not, with any lines and goals. */
const anySpace: fc.Arbitrary<Space> = fc
  .record({
    name: fc.constant('Field'),
    venue: fc.constant('Venue'),
    lengthMm: length(4000, 120_000),
    widthMm: length(4000, 120_000),
    covers: fc.constantFrom('whole', 'half', 'plain'),
    formatId: fc.constantFrom(...FORMAT_IDS),
    markings,
    goals: fc.tuple(goal('own'), goal('far')).map((goals) => goals.filter((found) => found !== null)),
  })
  .map((space): Space => space)

const landmark = fc.constantFrom(...LANDMARKS)
const offset = length(-40_000, 40_000)
const anySpot: fc.Arbitrary<Spot> = fc.record({ landmark, upMm: offset, rightMm: offset })
/** A space and a place in it, on whole millimetres or between them. */
const placeInSpace = fc
  .record({
    space: anySpace,
    up: fc.double({ min: 0, max: 1, noNaN: true }),
    right: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ space, up, right }) => {
    const area = spaceRectangle(space)
    return { space, place: point(up * area.far, area.left + right * (area.right - area.left)) }
  })

const MILLIMETRE = 0.001
const ROUNDING = 1e-9

describe('mirroring', () => {
  test('a landmark mirrored twice is itself, and changes only its last word', () => {
    for (const any of LANDMARKS) {
      const mirrored = mirrorLandmark(any)
      expect(mirrorLandmark(mirrored)).toBe(any)
      expect(mirrored.replace(/-(left|right)$/, '')).toBe(any.replace(/-(left|right)$/, ''))
      expect(mirrored === any).toBe(!/-(left|right)$/.test(any))
    }
  })

  test('a spot mirrored twice is itself', () => {
    fc.assert(
      fc.property(anySpot, (spot) => {
        expect(mirrorSpot(mirrorSpot(spot))).toEqual(spot)
      }),
    )
  })

  test('the place of a mirrored landmark is the mirrored place, on every space', () => {
    fc.assert(
      fc.property(anySpace, landmark, (space, any) => {
        const place = landmarkPoint(space, any)
        expect(landmarkPoint(space, mirrorLandmark(any))).toEqual(place === null ? null : mirrorPoint(place))
      }),
    )
  })

  test('the place of a mirrored spot is the mirrored place', () => {
    fc.assert(
      fc.property(anySpace, anySpot, (space, spot) => {
        const place = spotPoint(space, spot)
        const mirrored = spotPoint(space, mirrorSpot(spot))
        if (place === null) expect(mirrored).toBeNull()
        else expect(distance(mirrored ?? point(1e6, 0), mirrorPoint(place))).toBeLessThan(ROUNDING)
      }),
    )
  })

  test('found landmarks come in pairs', () => {
    fc.assert(
      fc.property(anySpace, (space) => {
        const found = new Map(landmarksFound(space).map((each) => [each.landmark, each.finding]))
        for (const [each, by] of found) expect(found.get(mirrorLandmark(each))).toBe(by)
      }),
    )
  })
})

describe('spots', () => {
  test('the nearest spot of a place leads back to it within a millimetre', () => {
    fc.assert(
      fc.property(placeInSpace, ({ space, place }) => {
        const back = spotPoint(space, nearestSpot(space, place))
        expect(distance(back ?? point(1e6, 0), place)).toBeLessThan(MILLIMETRE)
      }),
      { numRuns: 200 },
    )
  })

  test('no other landmark of the space is nearer than the one chosen, but for the rounding', () => {
    fc.assert(
      fc.property(placeInSpace, ({ space, place }) => {
        const spot = nearestSpot(space, place)
        const chosen = landmarkPoint(space, spot.landmark)
        for (const other of LANDMARKS) {
          const at = landmarkPoint(space, other)
          if (at === null || chosen === null) continue
          expect(distance(chosen, place)).toBeLessThanOrEqual(distance(at, place) + 2 * MILLIMETRE)
        }
      }),
    )
  })

  test('a landmark’s own place is the spot of a landmark with no offset', () => {
    fc.assert(
      fc.property(anySpace, landmark, (space, any) => {
        const place = landmarkPoint(space, any)
        if (place === null) return
        const spot = nearestSpot(space, place)
        expect([spot.upMm, spot.rightMm]).toEqual([0, 0])
      }),
    )
  })

  test('moving two spots of one landmark alike leaves their distance as it was', () => {
    fc.assert(
      fc.property(anySpace, anySpot, offset, offset, (space, spot, up, right) => {
        const from = spotPoint(space, spot)
        const to = spotPoint(space, {
          ...spot,
          upMm: millimetres(spot.upMm + up),
          rightMm: millimetres(spot.rightMm + right),
        })
        if (from === null || to === null) return
        expect(distance(from, to)).toBeCloseTo(Math.hypot(up, right) / 1000, 9)
      }),
    )
  })
})

describe('the ground', () => {
  test('every landmark of a space, and so every landmark found, lies in its rectangle', () => {
    fc.assert(
      fc.property(anySpace, (space) => {
        for (const any of LANDMARKS) {
          const place = landmarkPoint(space, any)
          if (place !== null) expect(containsPoint(spaceRectangle(space), place, ROUNDING)).toBe(true)
        }
        for (const { landmark: any, point: place } of landmarksFound(space)) {
          expect(landmarkPoint(space, any)).toEqual(place)
        }
      }),
    )
  })

  test('a space without lines and goals has no landmark to find, but every space has its corners and goal to measure', () => {
    fc.assert(
      fc.property(anySpace, (space) => {
        const none = Object.fromEntries(MARKINGS.map((marking) => [marking, 'none'])) as Space['markings']
        expect(landmarksFound({ ...space, markings: none, goals: [] })).toEqual([])
        for (const always of ['goal-centre', 'corner-left', 'corner-right', 'halfway-left', 'centre-mark'] as const) {
          expect(landmarkPoint(space, always)).not.toBeNull()
        }
      }),
    )
  })

  test('every marking is drawn inside the space', () => {
    fc.assert(
      fc.property(anySpace, (space) => {
        const area = spaceRectangle(space)
        for (const marking of pitchMarkings(space)) {
          for (const place of placesOf(marking)) {
            expect(containsPoint(area, place, 1e-6), `${marking.kind} ${marking.marking}`).toBe(true)
          }
          if (marking.kind === 'rect') expect(containsRectangle(area, marking.area)).toBe(true)
        }
      }),
      { numRuns: 200 },
    )
  })

  test('nothing is drawn that was not found, but the edge of the space', () => {
    fc.assert(
      fc.property(anySpace, (space) => {
        for (const marking of pitchMarkings(space)) {
          expect(marking.finding === 'none').toBe(marking.marking === 'boundary' && space.markings.boundary === 'none')
        }
      }),
    )
  })
})

describe('gates', () => {
  test('a way out of the space ends at a gate on its edge, on that way', () => {
    fc.assert(
      fc.property(placeInSpace, offset, offset, ({ space, place }, up, right) => {
        const to = add(place, point(up / 1000, right / 1000))
        const gate = gateAt(space, place, to)
        const area = spaceRectangle(space)
        expect(gate === null).toBe(containsPoint(area, to, ROUNDING))
        if (gate === null) return
        expect(containsPoint(area, gate, 1e-6)).toBe(true)
        expect(containsPoint(area, gate, -1e-6)).toBe(false)
        expect(distance(place, gate) + distance(gate, to)).toBeCloseTo(distance(place, to), 6)
      }),
      { numRuns: 200 },
    )
  })
})

/** Places of a marking's lines, close enough together that none could leave the space unseen. */
function placesOf(marking: PitchMarking): readonly Point[] {
  switch (marking.kind) {
    case 'line':
      return [marking.from, marking.to]
    case 'rect':
      return []
    case 'arc':
      return Array.from({ length: 37 }, (_, index) => {
        const share = index / 36
        const degrees = marking.fromDegrees + (marking.toDegrees - marking.fromDegrees) * share
        return pointOnCircle(marking.centre, marking.radius, degrees)
      })
    case 'circle':
      return [0, 90, 180, 270].map((degrees) => pointOnCircle(marking.centre, marking.radius, degrees))
    case 'dot':
      return [marking.at]
    case 'goal':
      return [marking.left, marking.right]
  }
}
