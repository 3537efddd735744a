import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { metres } from '../quantities'
import { distance, point } from './point'
import { lengthOf, pointAlong } from './polyline'

const way = [point(0, 0), point(3, 4), point(3, 10)]

describe('a way in straight legs', () => {
  test('its length is the sum of its legs', () => {
    expect(lengthOf(way)).toBe(11)
    expect(lengthOf([point(1, 1)])).toBe(0)
    expect(lengthOf([])).toBe(0)
  })

  test('a place along it lies on the leg that the length reaches', () => {
    expect(pointAlong(way, metres(2.5))).toEqual(point(1.5, 2))
    expect(pointAlong(way, metres(5))).toEqual(point(3, 4))
    expect(pointAlong(way, metres(7))).toEqual(point(3, 6))
  })

  test('before the start it is the start, past the end the end', () => {
    expect(pointAlong(way, metres(-1))).toEqual(point(0, 0))
    expect(pointAlong(way, metres(12))).toEqual(point(3, 10))
  })

  test('a leg without length is walked over', () => {
    expect(pointAlong([point(0, 0), point(0, 0), point(2, 0)], metres(1))).toEqual(point(1, 0))
  })

  test('no two places along a way are farther apart than the way between them', () => {
    const place = fc
      .tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }))
      .map(([x, y]) => point(x, y))
    const lengths = fc.integer({ min: 0, max: 300 })
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 8 }), lengths, lengths, (line, a, b) => {
        const apart = distance(pointAlong(line, metres(a)), pointAlong(line, metres(b)))
        expect(apart).toBeLessThanOrEqual(Math.abs(a - b) + 1e-9)
      }),
    )
  })
})
