import { describe, expect, test } from 'vitest'
import { distance, point } from '../geometry'
import { millimetres } from '../quantities'
import { pointOnCircle } from './clip'
import { buildOutLine, landmarkPoint } from './landmark'
import { nominalSpace } from './nominal-space'
import type { PitchMarking } from './pitch-marking'
import { pitchMarkings } from './pitch-markings'
import type { Space } from './space'
import type { Landmark } from './spot'

const YARD_METRES = 0.9144

// Source: IFAB, Laws of the Game, Law 1 The Field of Play (2006/07 text; the measures have not changed). Exact but for
// binary fractions: a nanometre.
describe('IFAB Laws of the Game, Law 1, on a pitch of 105 by 68 m', () => {
  const field = nominalSpace('ifab-11v11')

  test.each<[Landmark, number, number]>([
    ['goal-centre', 0, 0],
    // Goals: 7.32 m between the posts.
    ['goal-post-left', 0, -3.66],
    ['goal-post-right', 0, 3.66],
    // The goal area: lines 5.5 m from each post reach 5.5 m into the field.
    ['goal-area-edge-left', 0, -(3.66 + 5.5)],
    ['goal-area-corner-right', 5.5, 3.66 + 5.5],
    // The penalty area: 16.5 m from each post, 16.5 m into the field, its mark 11 m from the middle between the posts.
    ['penalty-area-edge-right', 0, 3.66 + 16.5],
    ['penalty-area-corner-left', 16.5, -(3.66 + 16.5)],
    ['penalty-area-top', 16.5, 0],
    ['penalty-mark', 11, 0],
    // An arc of 9.15 m round the mark.
    ['penalty-arc-top', 11 + 9.15, 0],
    ['corner-left', 0, -34],
    ['centre-mark', 52.5, 0],
    ['halfway-right', 52.5, 34],
    ['far-goal-post-right', 105, 3.66],
    ['far-penalty-area-corner-left', 105 - 16.5, -(3.66 + 16.5)],
    ['far-penalty-mark', 105 - 11, 0],
    ['far-corner-right', 105, 34],
  ])('%s lies %f m up and %f m to the right', (landmark, up, right) => {
    expect(distance(landmarkPoint(field, landmark) ?? point(1e6, 0), point(up, right))).toBeLessThan(1e-9)
  })

  test('the penalty arc meets the penalty area √(9.15² − 5.5²) = 7.312 m either side of the middle', () => {
    const arcs = pitchMarkings(field).filter((marking) => marking.marking === 'penalty-arc')
    expect(arcs).toHaveLength(2)
    const [own, far] = arcs.map(endsOf)
    expect(own?.map(({ x, y }) => [x, Math.abs(y)].map(toMillimetre))).toEqual([
      [16.5, 7.312],
      [16.5, 7.312],
    ])
    expect(far?.map(({ x, y }) => [x, Math.abs(y)].map(toMillimetre))).toEqual([
      [88.5, 7.312],
      [88.5, 7.312],
    ])
  })

  test('the centre circle has 9.15 m, the corner arcs 1 m inside the field', () => {
    const circles = pitchMarkings(field).filter((marking) => marking.kind === 'circle')
    expect(circles).toEqual([
      { kind: 'circle', marking: 'centre-circle', finding: 'painted', centre: point(52.5, 0), radius: 9.15 },
    ])
    const corners = pitchMarkings(field).filter((marking) => marking.marking === 'corner-arc')
    expect(corners).toHaveLength(4)
    for (const corner of corners) {
      if (corner.kind !== 'arc') expect.unreachable('a corner arc is an arc')
      else expect([corner.radius, corner.toDegrees - corner.fromDegrees]).toEqual([1, 90])
    }
  })

  test('it has no build-out line', () => {
    expect(buildOutLine(field)).toBeNull()
    expect(landmarkPoint(field, 'build-out-line-left')).toBeNull()
  })
})

// Source: U.S. Soccer Player Development Initiatives, 7v7 build-out line (2019 text): as far from the top of the penalty
// area as from the halfway line. With a penalty area of 12 yd the distance from the goal line is (L/2 + 12)/2: the case of
// 60 yd is printed as 9 yd from the halfway line, the others follow. Tolerance: a millimetre, since fields are stored in whole ones.
describe('U.S. Soccer 7v7 build-out line, midway between penalty area and halfway line', () => {
  const field = (lengthYards: number, covers: Space['covers']): Space => ({
    ...nominalSpace('us-7v7'),
    lengthMm: millimetres(Math.round((lengthYards * YARD_METRES * 1000) / (covers === 'half' ? 2 : 1))),
    covers,
  })

  test.each([
    [55, 19.75],
    [60, 21],
    [65, 22.25],
  ])('on a field of %f yd it lies %f yd from the goal line, on the whole pitch and on its half', (length, expected) => {
    for (const covers of ['whole', 'half'] as const) {
      const space = field(length, covers)
      expect(Math.abs((buildOutLine(space) ?? 0) - expected * YARD_METRES)).toBeLessThan(0.001)
      const meets = landmarkPoint(space, 'build-out-line-right')
      expect(distance(meets ?? point(0, 0), point(expected * YARD_METRES, 18.288))).toBeLessThan(0.001)
    }
  })

  test('on a field of 60 yd it lies 9 yd from the halfway line, at both ends', () => {
    const space = field(60, 'whole')
    const halfway = landmarkPoint(space, 'centre-mark') ?? point(0, 0)
    for (const landmark of ['build-out-line-centre', 'far-build-out-line-centre'] as const) {
      const centre = landmarkPoint(space, landmark) ?? halfway
      expect(Math.abs(distance(centre, halfway) - 9 * YARD_METRES)).toBeLessThan(0.001)
    }
  })
})

function endsOf(marking: PitchMarking) {
  if (marking.kind !== 'arc') return expect.unreachable('a penalty arc is an arc')
  return [marking.fromDegrees, marking.toDegrees].map((degrees) =>
    pointOnCircle(marking.centre, marking.radius, degrees),
  )
}

function toMillimetre(length: number): number {
  return Math.round(length * 1000) / 1000
}
