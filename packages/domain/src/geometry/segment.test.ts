import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { add, distance, point } from './point'
import { distanceToSegment, projectOnSegment } from './segment'

const place = fc
  .tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: -100_000, max: 100_000 }))
  .map(([x, y]) => point(x / 1000, y / 1000))

describe('the nearest place on a segment', () => {
  const lane = { from: point(0, 0), to: point(10, 0) }

  test('a place beside the lane falls square onto it', () => {
    expect(projectOnSegment(point(4, 3), lane)).toEqual({ point: point(4, 0), share: 0.4, along: 4, distance: 3 })
  })

  test('a place before the start is measured to the start, one past the end to the end', () => {
    expect(distanceToSegment(point(-3, 4), lane)).toBe(5)
    expect(distanceToSegment(point(13, -4), lane)).toBe(5)
    expect(projectOnSegment(point(13, -4), lane).point).toEqual(point(10, 0))
  })

  test('a segment without length is its one place', () => {
    const spot = { from: point(2, 2), to: point(2, 2) }
    expect(projectOnSegment(point(5, 6), spot)).toEqual({ point: point(2, 2), share: 0, along: 0, distance: 5 })
  })

  test('no sampled place of the segment is nearer', () => {
    fc.assert(
      fc.property(place, place, place, fc.integer({ min: 0, max: 100 }), (from, to, at, percent) => {
        const share = percent / 100
        const sample = point(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share)
        expect(distanceToSegment(at, { from, to })).toBeLessThanOrEqual(distance(at, sample) + 1e-9)
      }),
    )
  })

  test('turning the segment round or moving everything alike changes no distance', () => {
    fc.assert(
      fc.property(place, place, place, place, (from, to, at, move) => {
        const before = distanceToSegment(at, { from, to })
        expect(distanceToSegment(at, { from: to, to: from })).toBeCloseTo(before, 9)
        const moved = { from: add(from, move), to: add(to, move) }
        expect(distanceToSegment(add(at, move), moved)).toBeCloseTo(before, 9)
      }),
    )
  })
})
