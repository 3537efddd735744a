import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { millimetres } from '../quantities'
import type { Place } from './pattern-places'
import { searchOrder } from './walk-search'
import { EXACT_STOPS_MAX, findTour, walkMm } from './walk-tour'

function at(upMm: number, rightMm: number): Place {
  return { upMm: millimetres(upMm), rightMm: millimetres(rightMm) }
}

const place = fc
  .tuple(fc.integer({ min: 0, max: 60_000 }), fc.integer({ min: -20_000, max: 20_000 }))
  .map(([up, right]) => at(up, right))

/** Every order from every start, by brute force: an oracle that shares nothing with the search. */
function shortestByTrying(starts: readonly Place[], stops: readonly Place[]): number {
  if (stops.length === 0) return 0
  let best = Number.POSITIVE_INFINITY
  const walk = (from: Place, left: readonly Place[], length: number): void => {
    if (left.length === 0) best = Math.min(best, length)
    left.forEach((next, index) => {
      const rest = [...left.slice(0, index), ...left.slice(index + 1)]
      walk(next, rest, length + Math.abs(from.upMm - next.upMm) + Math.abs(from.rightMm - next.rightMm))
    })
  }
  for (const start of starts) walk(start, stops, 0)
  return best
}

describe('the order of the set-out walk', () => {
  test('is the shortest of all orders from all starts, against exhaustive search on up to seven stops', () => {
    const starts = fc.array(place, { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(starts, fc.array(place, { maxLength: 7 }), (from, stops) => {
        expect(findTour(from, stops).lengthMm).toBe(shortestByTrying(from, stops))
      }),
      { numRuns: 60 },
    )
  })

  test('visits every stop once and is as long as it says, above the exact size too', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 40 }), (stops) => {
        const start = at(0, 0)
        const tour = findTour([start], stops)
        expect(tour.order.toSorted((a, b) => a - b)).toEqual(stops.map((_, index) => index))
        let from = start
        let length = 0
        for (const index of tour.order) {
          length += walkMm(from, stops[index]!)
          from = stops[index]!
        }
        expect(tour.lengthMm).toBe(length)
      }),
    )
  })

  test('the local search is never better than the exact order, and at most a quarter longer on ten random stops', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: EXACT_STOPS_MAX, maxLength: EXACT_STOPS_MAX }), (stops) => {
        const enter = stops.map((stop) => walkMm(at(0, 0), stop))
        const between = stops.map((a) => stops.map((b) => walkMm(a, b)))
        const searched = searchOrder({ enter, between }).reduce(
          (sum, stop, index, order) => sum + (index === 0 ? enter[stop]! : between[order[index - 1]!]![stop]!),
          0,
        )
        const exact = findTour([at(0, 0)], stops).lengthMm
        expect(searched).toBeGreaterThanOrEqual(exact)
        expect(searched * 4).toBeLessThanOrEqual(exact * 5)
      }),
      { numRuns: 60, seed: 20261125 },
    )
  })

  test('starts at the start that makes the walk shortest', () => {
    expect(findTour([at(0, -10_000), at(0, 10_000)], [at(0, 9000), at(0, 4000)]).start).toBe(1)
  })
})
