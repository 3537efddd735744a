import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { metres } from '../quantities'
import { distance, point } from './point'
import {
  areaOf,
  containsPoint,
  containsRectangle,
  cornersOf,
  middleOf,
  nearestInside,
  overlap,
  overlapOf,
  rectangle,
  rectangleAround,
} from './rectangle'

const whole = fc.integer({ min: -60, max: 60 })
const area = fc
  .tuple(whole, whole, whole, whole)
  .map(([a, b, c, d]) => rectangle(Math.min(a, b), Math.max(a, b), Math.min(c, d), Math.max(c, d)))
const place = fc.tuple(whole, whole).map(([x, y]) => point(x, y))

describe('rectangles along the pitch', () => {
  test('one built round its middle has that middle, length and width', () => {
    const built = rectangleAround(point(10, -2), metres(8), metres(6))
    expect(built).toEqual(rectangle(6, 14, -5, 1))
    expect(middleOf(built)).toEqual(point(10, -2))
    expect(areaOf(built)).toBe(48)
  })

  test('an inside-out rectangle is refused as a bug', () => {
    expect(() => rectangle(3, 2, 0, 1)).toThrow('inside out')
  })

  test('its edge belongs to it, and every corner', () => {
    fc.assert(
      fc.property(area, (any) => {
        for (const corner of cornersOf(any)) expect(containsPoint(any, corner)).toBe(true)
      }),
    )
    expect(containsPoint(rectangle(0, 10, 0, 10), point(10.001, 5))).toBe(false)
    expect(containsPoint(rectangle(0, 10, 0, 10), point(10.001, 5), 0.01)).toBe(true)
  })

  test('touching areas do not overlap; one metre in, they do', () => {
    expect(overlap(rectangle(0, 10, 0, 10), rectangle(10, 20, 0, 10))).toBe(false)
    expect(overlapOf(rectangle(0, 10, 0, 10), rectangle(9, 20, 4, 30))).toEqual(rectangle(9, 10, 4, 10))
  })

  test('what two areas share lies in both and is the same from either side', () => {
    fc.assert(
      fc.property(area, area, (a, b) => {
        const shared = overlapOf(a, b)
        expect(overlapOf(b, a)).toEqual(shared)
        if (shared === null) return
        expect(containsRectangle(a, shared) && containsRectangle(b, shared)).toBe(true)
      }),
    )
  })

  test('the nearest place inside is inside, and no corner is nearer', () => {
    fc.assert(
      fc.property(area, place, (any, at) => {
        const nearest = nearestInside(any, at)
        expect(containsPoint(any, nearest)).toBe(true)
        for (const corner of cornersOf(any)) {
          expect(distance(at, nearest)).toBeLessThanOrEqual(distance(at, corner) + 1e-9)
        }
      }),
    )
  })
})
