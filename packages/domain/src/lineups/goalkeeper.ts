import { type FairCounts, fairestCounts, wholeSides } from './counts'
import { blocksOfSide, fieldPlayers, type Instance } from './instance'
import type { LayeredFlow } from './layered-network'

/** A goalkeeper for the whole activity with the fairest counts of everyone else. */
export type Contender = {
  readonly keeper: number | null
  readonly players: readonly number[]
  readonly fair: FairCounts
  readonly sums: Sums
}

export type Sums = { readonly squares: number; readonly sideSquares: number }

/** Everyone in goal with whom the plan is as fair as it can be, in the order of `keepers`; empty when no one can be spared. */
export function fairestGoalkeepers(instance: Instance, keepers: readonly (number | null)[]): Contender[] {
  let best: Contender[] = []
  const hopes = keepers
    .map((keeper, rank) => ({ keeper, rank, bound: squaresAtLeast(instance, keeper) }))
    .sort((a, b) => a.bound - b.bound || a.rank - b.rank)
  const found: { rank: number; contender: Contender }[] = []
  for (const { keeper, rank, bound } of hopes) {
    if (best.length > 0 && bound > best[0]!.sums.squares) break
    const contender = contenderOf(instance, keeper)
    if (contender === null) continue
    found.push({ rank, contender })
    const order = best.length === 0 ? -1 : compareSums(contender.sums, best[0]!.sums)
    if (order < 0) best = [contender]
    else if (order === 0) best.push(contender)
  }
  return found
    .filter((it) => best.includes(it.contender))
    .sort((a, b) => a.rank - b.rank)
    .map((it) => it.contender)
}

function contenderOf(instance: Instance, keeper: number | null): Contender | null {
  const players = fieldPlayers(instance, keeper)
  const start = { blocks: instance.pastBlocks, bySide: instance.pastBySide }
  const fair = fairestCounts(instance, players, start, wholeSides(instance.sides))
  if (fair === null) return null
  return { keeper, players, fair, sums: sumsOfFlow(instance, keeper, fair.flow) }
}

/** The sums of a complete flow, whose layers hold all blocks of the instance. */
export function sumsOfFlow(instance: Instance, keeper: number | null, flow: LayeredFlow): Sums {
  const counts = [instance.childIds.map(() => 0), instance.childIds.map(() => 0)] as const
  for (const place of flow.places) {
    const side = flow.layers[place.layer]!.side
    counts[side][place.child] = counts[side][place.child]! + flow.net.flow[place.arc]!
  }
  if (keeper !== null) for (const side of [0, 1] as const) counts[side][keeper] = blocksOfSide(instance, side)
  return sumsOf(instance, counts)
}

/** The two sums of squares when these blocks by side and child are added to the past. */
export function sumsOf(instance: Instance, counts: readonly [readonly number[], readonly number[]]): Sums {
  let squares = 0
  let sideSquares = 0
  instance.childIds.forEach((_, child) => {
    squares += (instance.pastBlocks[child]! + counts[0][child]! + counts[1][child]!) ** 2
    sideSquares += (instance.pastBySide[0][child]! + counts[0][child]!) ** 2
    sideSquares += (instance.pastBySide[1][child]! + counts[1][child]!) ** 2
  })
  return { squares, sideSquares }
}

export function compareSums(a: Sums, b: Sums): number {
  return a.squares - b.squares || a.sideSquares - b.sideSquares
}

/** What the sum of squares could not fall below if every child could play everywhere: blocks go to whoever has had fewest. */
export function squaresAtLeast(instance: Instance, keeper: number | null): number {
  const blocks = instance.sides.length
  const counts = instance.pastBlocks.map((past, child) => (child === keeper ? past + blocks : past))
  const room = counts.map((_, child) => (child === keeper ? 0 : blocks))
  for (let slot = blocks * instance.fieldPositions.length; slot > 0; slot--) {
    let next = -1
    counts.forEach((count, child) => {
      if (room[child]! > 0 && (next < 0 || count < counts[next]!)) next = child
    })
    if (next < 0) break
    counts[next] = counts[next]! + 1
    room[next] = room[next]! - 1
  }
  return counts.reduce((sum, count) => sum + count ** 2, 0)
}
