import type { WalkLengths } from './walk-tour'

/** Nearest stop first, then every reversal and move that shortens the walk, until a whole round of them shortens nothing. */
export function searchOrder(lengths: WalkLengths): readonly number[] {
  let order = nearestFirst(lengths)
  for (;;) {
    const reversed = reverseStretches(lengths, order)
    const moved = moveStops(lengths, reversed.order)
    order = moved.order
    if (!reversed.shorter && !moved.shorter) return order
  }
}

type Pass = { readonly order: number[]; readonly shorter: boolean }

function nearestFirst({ enter, between }: WalkLengths): number[] {
  const open = new Set(enter.keys())
  const order: number[] = []
  while (open.size > 0) {
    const at = order.at(-1)
    let nearest = -1
    let least = Number.POSITIVE_INFINITY
    for (const stop of open) {
      const length = at === undefined ? enter[stop]! : between[at]![stop]!
      if (length < least) {
        least = length
        nearest = stop
      }
    }
    open.delete(nearest)
    order.push(nearest)
  }
  return order
}

/** From the stop before `index` of the order (or a start) to `stop`. */
function lengthInto({ enter, between }: WalkLengths, order: readonly number[], index: number, stop: number): number {
  return index === 0 ? enter[stop]! : between[order[index - 1]!]![stop]!
}

/** From `stop` to the one at `index` of the order; nothing after the last. */
function lengthOut({ between }: WalkLengths, order: readonly number[], index: number, stop: number): number {
  const next = order[index]
  return next === undefined ? 0 : between[stop]![next]!
}

function reverseStretches(lengths: WalkLengths, from: readonly number[]): Pass {
  const order = [...from]
  let shorter = false
  for (let first = 0; first < order.length - 1; first += 1) {
    for (let last = first + 1; last < order.length; last += 1) {
      const head = order[first]!
      const tail = order[last]!
      const now = lengthInto(lengths, order, first, head) + lengthOut(lengths, order, last + 1, tail)
      const reversed = lengthInto(lengths, order, first, tail) + lengthOut(lengths, order, last + 1, head)
      if (reversed >= now) continue
      order.splice(first, last - first + 1, ...order.slice(first, last + 1).reverse())
      shorter = true
    }
  }
  return { order, shorter }
}

/** Moves of one to three stops, kept in their order, to the place of the walk where they add least. */
function moveStops(lengths: WalkLengths, from: readonly number[]): Pass {
  let order = [...from]
  let shorter = false
  for (let size = 1; size <= 3; size += 1) {
    for (let index = 0; index + size <= order.length; index += 1) {
      const moved = order.slice(index, index + size)
      const rest = [...order.slice(0, index), ...order.slice(index + size)]
      const best = cheapestPlace(lengths, rest, moved[0]!, moved[size - 1]!, index)
      if (best === index) continue
      order = [...rest.slice(0, best), ...moved, ...rest.slice(best)]
      shorter = true
    }
  }
  return { order, shorter }
}

/** Where in the order the moved stops add least; where they were, unless another place is truly shorter. */
function cheapestPlace(lengths: WalkLengths, rest: readonly number[], head: number, tail: number, was: number): number {
  let best = was
  let least = addedAt(lengths, rest, was, head, tail)
  for (let place = 0; place <= rest.length; place += 1) {
    const added = addedAt(lengths, rest, place, head, tail)
    if (added < least) {
      least = added
      best = place
    }
  }
  return best
}

function addedAt(lengths: WalkLengths, rest: readonly number[], place: number, head: number, tail: number): number {
  const next = rest[place]
  const closed = next === undefined ? 0 : lengthInto(lengths, rest, place, next)
  return lengthInto(lengths, rest, place, head) + lengthOut(lengths, rest, place, tail) - closed
}
