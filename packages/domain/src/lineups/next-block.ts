import { assert } from '../quantities'
import { fairestCounts, type PlaceCosts, wholeSides } from './counts'
import { compareSums, type Sums, squaresAtLeast, sumsOfFlow } from './goalkeeper'
import { fieldPlayers, type Instance, OFF, type Round } from './instance'
import type { LineupBlock } from './types'

/** Habit: what children and coach take in between two blocks (common practice, no source). */
export const PLACES_CHANGED_MOST = 2

export type NextBlock = {
  readonly keeper: number | null
  readonly round: Round
  /** Places, the goal among them, that another child takes than was planned. */
  readonly placesChanged: number
  /** Whether a fairest plan begins like this. */
  readonly fairestOfAll: boolean
}

type Candidate = Omit<NextBlock, 'fairestOfAll'> & { readonly sums: Sums }

/** What is known when the next block is planned anew; the instance holds the blocks from the next one on. */
type Situation = {
  readonly instance: Instance
  readonly planned: Round
  readonly plannedKeeper: number | null
  readonly running: Round | null
}

/**
 * The next block: a fairest plan that changes at most two of its places, if there is one; otherwise the fewest places, and then
 * the fairest. The goalkeeper hands over only after leaving, or when a position has nobody else.
 */
export function chooseNextBlock(
  instance: Instance,
  goalkeeperPosition: string | null,
  planned: LineupBlock,
  running: LineupBlock | null,
): NextBlock {
  const situation: Situation = {
    instance,
    planned: roundOfBlock(instance, planned),
    plannedKeeper: goalkeeperOf(instance, goalkeeperPosition, planned),
    running: running === null ? null : roundOfBlock(instance, running),
  }
  const { plannedKeeper } = situation
  const stays = plannedKeeper === null ? null : fairestStart(situation, [plannedKeeper])
  const keepers = stays !== null ? [plannedKeeper] : (instance.keepers ?? [null])
  const fair = stays ?? fairestStart(situation, keepers)
  assert(fair !== null, 'a line-up without a shortage can be filled')
  if (fair.placesChanged <= PLACES_CHANGED_MOST) return { ...fair, fairestOfAll: true }
  const calm = calmestStart(situation, keepers)
  return { ...calm, fairestOfAll: compareSums(calm.sums, fair.sums) === 0 }
}

/** Fairness first, then the fewest places; goalkeepers who cannot be fairer than the best so far are not tried. */
function fairestStart(situation: Situation, keepers: readonly (number | null)[]): Candidate | null {
  let best: Candidate | null = null
  const hopes = keepers.map((keeper) => ({ keeper, bound: squaresAtLeast(situation.instance, keeper) }))
  for (const { keeper, bound } of hopes.sort((a, b) => a.bound - b.bound)) {
    if (best !== null && bound > best.sums.squares) break
    const found = startWith(situation, keeper, 'after-fairness')
    if (found === null) continue
    const order = best === null ? -1 : compareSums(found.sums, best.sums) || found.placesChanged - best.placesChanged
    if (order < 0) best = found
  }
  return best
}

/** The fewest places first, then fairness. */
function calmestStart(situation: Situation, keepers: readonly (number | null)[]): Candidate {
  const found = keepers.flatMap((keeper) => startWith(situation, keeper, 'before-fairness') ?? [])
  return found.reduce((best, it) =>
    (it.placesChanged - best.placesChanged || compareSums(it.sums, best.sums)) < 0 ? it : best,
  )
}

/** One flow: the next block as a layer of its own, where a changed place has its price, and all later blocks behind it. */
function startWith(situation: Situation, keeper: number | null, rank: PlaceCosts['rank']): Candidate | null {
  const { instance, planned, running } = situation
  const [side, ...later] = instance.sides
  assert(side !== undefined, 'there is a block to come')
  const positions = instance.fieldPositions.length
  const cost = (child: number, position: number) => {
    const stands = running?.[child] ?? OFF
    const changesPosition = stands !== OFF && stands !== position ? 1 : 0
    return (planned[child] === position ? 0 : positions + 1) + changesPosition
  }
  const start = { blocks: instance.pastBlocks, bySide: instance.pastBySide }
  const layers = [{ side, blocks: 1, cost }, ...wholeSides(later)]
  const players = fieldPlayers(instance, keeper)
  const fair = fairestCounts(instance, players, start, layers, { rank, spread: positions * (positions + 2) })
  if (fair === null) return null
  const round = instance.childIds.map(() => OFF)
  for (const place of fair.flow.places) {
    if (place.layer === 0 && fair.flow.net.flow[place.arc]! > 0) round[place.child] = place.position
  }
  const changed = players.filter((child) => round[child] !== OFF && round[child] !== planned[child]).length
  const placesChanged = changed + (keeper === situation.plannedKeeper ? 0 : 1)
  return { keeper, round, placesChanged, sums: sumsOfFlow(instance, keeper, fair.flow) }
}

function roundOfBlock(instance: Instance, block: LineupBlock): Round {
  const positionOf = new Map(block.places.map((place) => [place.childId, place.position]))
  return instance.childIds.map((childId) => instance.fieldPositions.indexOf(positionOf.get(childId) ?? ''))
}

/** The block's goalkeeper, if still available. */
function goalkeeperOf(instance: Instance, goalkeeperPosition: string | null, block: LineupBlock): number | null {
  const place = block.places.find((it) => it.position === goalkeeperPosition)
  const child = instance.childIds.indexOf(place?.childId ?? '')
  return child < 0 ? null : child
}
