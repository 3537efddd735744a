import { assert } from '../quantities'
import type { Place } from './pattern-places'
import { searchOrder } from './walk-search'

/** Up to so many stops the order is the shortest there is; above it is the best a local search finds. */
export const EXACT_STOPS_MAX = 10

/** Millimetres one walks between two places: up or down the pitch, then across it. */
export function walkMm(a: Place, b: Place): number {
  return Math.abs(a.upMm - b.upMm) + Math.abs(a.rightMm - b.rightMm)
}

export type Tour = {
  /** Which of the starts the walk begins at. */
  readonly start: number
  readonly order: readonly number[]
  readonly lengthMm: number
}

/** Walked millimetres from the nearest start to each stop, and between stops. */
export type WalkLengths = {
  readonly enter: readonly number[]
  readonly between: readonly (readonly number[])[]
}

/**
 * The order of a walk from one of the starts through every stop once, ending anywhere, by walked millimetres. Exact to ten
 * stops (Held and Karp 1962); above, nearest stop first, then reversals of stretches (2-opt) and moves of one to three stops
 * (or-opt) until none shortens it. Ties keep the earlier, so equal input gives an equal walk.
 */
export function findTour(starts: readonly Place[], stops: readonly Place[]): Tour {
  assert(starts.length > 0, 'a walk starts somewhere')
  const lengths: WalkLengths = {
    enter: stops.map((stop) => Math.min(...starts.map((start) => walkMm(start, stop)))),
    between: stops.map((a) => stops.map((b) => walkMm(a, b))),
  }
  const order = stops.length <= EXACT_STOPS_MAX ? exactOrder(lengths) : searchOrder(lengths)
  const first = stops[order[0] ?? -1]
  const start = first ? starts.findIndex((each) => walkMm(each, first) === lengths.enter[order[0]!]) : 0
  return { start, order, lengthMm: orderLength(lengths, order) }
}

function orderLength({ enter, between }: WalkLengths, order: readonly number[]): number {
  return order.reduce((sum, stop, index) => sum + (index === 0 ? enter[stop]! : between[order[index - 1]!]![stop]!), 0)
}

/** Held–Karp for an open walk: the shortest way to stand at `last` having seen the set `seen`. */
function exactOrder({ enter, between }: WalkLengths): readonly number[] {
  const count = enter.length
  if (count === 0) return []
  const sets = 1 << count
  const best = new Float64Array(sets * count).fill(Number.POSITIVE_INFINITY)
  const before = new Int8Array(sets * count).fill(-1)
  enter.forEach((length, index) => {
    best[(1 << index) * count + index] = length
  })
  for (let seen = 1; seen < sets; seen += 1) {
    for (let last = 0; last < count; last += 1) {
      const length = best[seen * count + last]!
      if (length === Number.POSITIVE_INFINITY) continue
      for (let next = 0; next < count; next += 1) {
        if (seen & (1 << next)) continue
        const at = (seen | (1 << next)) * count + next
        const longer = length + between[last]![next]!
        if (longer < best[at]!) {
          best[at] = longer
          before[at] = last
        }
      }
    }
  }
  return walkBack(best, before, count)
}

function walkBack(best: Float64Array, before: Int8Array, count: number): readonly number[] {
  let seen = (1 << count) - 1
  let last = 0
  for (let index = 1; index < count; index += 1) {
    if (best[seen * count + index]! < best[seen * count + last]!) last = index
  }
  const order: number[] = []
  while (last >= 0) {
    order.push(last)
    const previous = before[seen * count + last]!
    seen &= ~(1 << last)
    last = previous
  }
  return order.reverse()
}
