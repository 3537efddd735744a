import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { containsPoint, point, rectangle } from '../geometry'
import { clipCircle, clipSegment, pointOnCircle } from './clip'

const area = rectangle(0, 10, -5, 5)

describe('lines cut at the edge of a space', () => {
  test('a segment inside stays as it is, one across is cut at both edges', () => {
    const inside = { from: point(1, 1), to: point(9, -4) }
    expect(clipSegment(inside, area)).toEqual(inside)
    expect(clipSegment({ from: point(-10, 0), to: point(30, 0) }, area)).toEqual({
      from: point(0, 0),
      to: point(10, 0),
    })
  })

  test('a segment that passes by, beside or past a corner, leaves nothing', () => {
    expect(clipSegment({ from: point(0, 6), to: point(10, 6) }, area)).toBeNull()
    expect(clipSegment({ from: point(-3, 4), to: point(1, 8) }, area)).toBeNull()
  })

  test('a circle inside stays whole, one outside is gone', () => {
    expect(clipCircle(point(5, 0), 4, [area])).toEqual([{ fromDegrees: 0, toDegrees: 360 }])
    expect(clipCircle(point(30, 0), 4, [area])).toEqual([])
  })

  test('a circle that only touches the edges from inside stays whole', () => {
    expect(clipCircle(point(5, 0), 5, [area])).toEqual([{ fromDegrees: 0, toDegrees: 360 }])
  })

  test('round a corner a quarter is left, round the middle of an edge a half, each in one piece', () => {
    expect(clipCircle(point(0, -5), 1, [area])).toEqual([{ fromDegrees: 0, toDegrees: 90 }])
    const half = clipCircle(point(0, 0), 2, [area])
    expect(half.map(({ fromDegrees, toDegrees }) => toDegrees - fromDegrees)).toEqual([180])
  })

  test('a circle wider than the space leaves one arc at each end of it', () => {
    const turns = clipCircle(point(5, 0), 5.5, [rectangle(0, 10, -20, 20)])
    expect(turns).toHaveLength(2)
    const sum = turns.reduce((total, turn) => total + turn.toDegrees - turn.fromDegrees, 0)
    // What is cut off on either side spans twice the angle whose cosine is 5/5.5.
    expect(sum).toBeCloseTo(360 - (4 * Math.acos(5 / 5.5) * 180) / Math.PI, 9)
  })

  test('an edge that the circle passes only by rounding cuts nothing, and does not break an arc in two', () => {
    const radius = 5 + 1e-12
    const whole = clipCircle(point(5, 0), radius, [rectangle(0, 10, -20, 20)])
    expect(whole.map(({ fromDegrees, toDegrees }) => toDegrees - fromDegrees)).toEqual([360])
    const cutOnTheLeft = clipCircle(point(5, 0), radius, [rectangle(0, 10, -2, 20)])
    expect(cutOnTheLeft).toHaveLength(1)
  })

  test('a circle that only touches a rectangle from outside is not in it', () => {
    // Found by the property below: the circle's far point lies on the rectangle's near edge.
    expect(clipCircle(point(3.5, 0), 2, [rectangle(5.5, 6, -2, 2)])).toEqual([])
    expect(clipCircle(point(0, 0), 2, [rectangle(-2, 2, -2, 2)])).toEqual([{ fromDegrees: 0, toDegrees: 360 }])
  })

  test('exactly what is inside every rectangle is kept, as turns that start between 0 and 360 degrees', () => {
    const halfMetres = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 2)
    const areas = fc.array(
      fc
        .tuple(halfMetres(-20, 20), halfMetres(-20, 20), halfMetres(1, 40), halfMetres(1, 40))
        .map(([near, left, length, width]) => rectangle(near, near + length, left, left + width)),
      { minLength: 1, maxLength: 2 },
    )
    const centre = fc.tuple(halfMetres(-20, 20), halfMetres(-20, 20)).map(([x, y]) => point(x, y))
    fc.assert(
      fc.property(centre, halfMetres(1, 30), areas, (at, radius, any) => {
        const turns = clipCircle(at, radius, any)
        for (const { fromDegrees, toDegrees } of turns) {
          expect(fromDegrees >= 0 && fromDegrees < 360 && toDegrees > fromDegrees).toBe(true)
        }
        // Angles that hit no cut of half-metre edges by accident.
        for (let degrees = 0.123; degrees < 360; degrees += 4.567) {
          const place = pointOnCircle(at, radius, degrees)
          if (any.some((each) => containsPoint(each, place, 1e-6) !== containsPoint(each, place, -1e-6))) continue
          const isDrawn = turns.some(
            ({ fromDegrees, toDegrees }) =>
              (degrees >= fromDegrees && degrees <= toDegrees) || degrees + 360 <= toDegrees,
          )
          expect(isDrawn).toBe(any.every((each) => containsPoint(each, place)))
        }
      }),
    )
  })
})
