import { assert, ok, type Result, refuse } from '../quantities'
import { fairestCounts, type PlaceCosts, wholeSides } from './counts'
import { type Diligence, fairestPlan } from './fairest-plan'
import { compareSums, sumsOfFlow } from './goalkeeper'
import { fieldPlayers, type Instance, instanceOf, OFF, type Round } from './instance'
import { countBlocksByChild, countPlanChanges, planSums } from './plan-counts'
import { findShortage } from './shortage'
import { blockOf } from './solve-lineups'
import type { LineupBlock, LineupChild, LineupPlan, LineupRefusal, LineupRequest } from './types'

/** An activity under way. */
export type LineupEvening = {
  /** Everyone who is or was here for the activity, with the past as it was before the activity. */
  readonly request: LineupRequest
  readonly plan: LineupPlan
  /** Blocks over or running: they stay as they are. */
  readonly playedBlocks: number
  /** Ids of children who sit out or have left. */
  readonly unavailable: readonly string[]
}

/** `arrives` is for a late child and for a guest; a guest's past is what the caller wants it to count as, such as the squad's mean. */
export type TurnoutChange =
  | { readonly kind: 'sits-out' | 'leaves' | 'returns'; readonly childId: string }
  | { readonly kind: 'arrives'; readonly child: LineupChild }

export type ResolvedLineups = {
  readonly evening: LineupEvening
  /** Places of the next block that another child takes than was planned. */
  readonly placesChanged: number
  /** No plan changes two places of the next block or fewer. */
  readonly moreNeeded: boolean
  /** The upcoming blocks are the fairest of all; when false, the fairest of those that change the fewest places of the next block. */
  readonly fairestOfAll: boolean
}

/** Habit: what children and coach take in between two blocks (common practice, no source). */
export const PLACES_CHANGED_MOST = 2

const AT_ONCE: Diligence = { deals: 1, refills: 6, proofSteps: 0 }

/**
 * Re-plans the blocks to come after one change of turnout. The goalkeeper stays while available. A fairest plan that changes at
 * most two places of the next block is taken when there is one; otherwise the fewest places change, and then it is the fairest.
 * What was played counts like past weeks. `changesProven` only when no change of position is left in the blocks to come.
 */
export function resolveLineups(evening: LineupEvening, change: TurnoutChange): Result<ResolvedLineups, LineupRefusal> {
  const { request, unavailable } = turnoutAfter(evening, change)
  const played = evening.plan.blocks.slice(0, evening.playedBlocks)
  const upcoming = upcomingRequest(request, played, unavailable)
  if (upcoming.blocks.length === 0) {
    const planned = { ...evening, request, unavailable }
    return ok({ evening: planned, placesChanged: 0, moreNeeded: false, fairestOfAll: true })
  }
  const shortage = findShortage(upcoming)
  if (shortage !== null) return refuse(shortage)
  const next = nextBlock(upcoming, evening)
  const rest = restOfPlan(upcoming, next)
  const blocks = [...played, ...rest]
  const sums = planSums(request, blocks)
  const plan: LineupPlan = {
    blocks,
    sumOfSquares: sums.squares,
    sideSumOfSquares: sums.sideSquares,
    changes: countPlanChanges(blocks),
    fairnessProven: true,
    changesProven: countPlanChanges([...played.slice(-1), ...rest]) === 0,
  }
  return ok({
    evening: { request, plan, playedBlocks: evening.playedBlocks, unavailable },
    placesChanged: next.placesChanged,
    moreNeeded: next.placesChanged > PLACES_CHANGED_MOST,
    fairestOfAll: next.fairestOfAll,
  })
}

function turnoutAfter(
  evening: LineupEvening,
  change: TurnoutChange,
): { readonly request: LineupRequest; readonly unavailable: readonly string[] } {
  const { request, unavailable } = evening
  if (change.kind === 'arrives') {
    assert(!request.children.some((it) => it.childId === change.child.childId), 'a child arrives once, then returns')
    return { request: { ...request, children: [...request.children, change.child] }, unavailable }
  }
  assert(
    request.children.some((it) => it.childId === change.childId),
    'only a child who is or was here can change',
  )
  const others = unavailable.filter((it) => it !== change.childId)
  return { request, unavailable: change.kind === 'returns' ? others : [...others, change.childId] }
}

/** The same question for the blocks to come: who is available, with the blocks played tonight among the past. */
function upcomingRequest(
  request: LineupRequest,
  played: readonly LineupBlock[],
  unavailable: readonly string[],
): LineupRequest {
  const counts = countBlocksByChild(played)
  return {
    ...request,
    blocks: request.blocks.slice(played.length),
    children: request.children
      .filter((child) => !unavailable.includes(child.childId))
      .map((child) => {
        const { left, right } = counts.get(child.childId) ?? { left: 0, right: 0 }
        const { past } = child
        return {
          ...child,
          past: { blocks: past.blocks + left + right, left: past.left + left, right: past.right + right },
        }
      }),
  }
}

type NextBlock = {
  readonly keeper: number | null
  readonly round: Round
  readonly placesChanged: number
  readonly fairestOfAll: boolean
}

function nextBlock(upcoming: LineupRequest, evening: LineupEvening): NextBlock {
  const instance = instanceOf(upcoming)
  const planned = roundOfBlock(instance, evening.plan.blocks[evening.playedBlocks]!)
  const running = evening.plan.blocks[evening.playedBlocks - 1]
  const before = running === undefined ? null : roundOfBlock(instance, running)
  const plannedKeeper = goalkeeperOf(upcoming, instance, evening.plan.blocks[evening.playedBlocks]!)
  const nextRounds = (keepers: readonly (number | null)[], rank: PlaceCosts['rank']) =>
    keepers.flatMap((keeper) => {
      const found = nextRound(instance, keeper, planned, before, rank)
      const keeperChanged = keeper === plannedKeeper ? 0 : 1
      return found === null ? [] : [{ ...found, placesChanged: found.fieldPlacesChanged + keeperChanged }]
    })
  // The goalkeeper hands over only after leaving, or when a position has nobody else.
  const canStay = plannedKeeper !== null && nextRounds([plannedKeeper], 'after-fairness').length > 0
  const keepers = instance.keepers === null ? [null] : canStay ? [plannedKeeper] : instance.keepers
  const candidates = (rank: PlaceCosts['rank']) => nextRounds(keepers, rank)
  const fair = candidates('after-fairness').reduce((best, it) =>
    (compareSums(it.sums, best.sums) || it.placesChanged - best.placesChanged) < 0 ? it : best,
  )
  if (fair.placesChanged <= PLACES_CHANGED_MOST) return { ...fair, fairestOfAll: true }
  const calm = candidates('before-fairness').reduce((best, it) =>
    (it.placesChanged - best.placesChanged || compareSums(it.sums, best.sums)) < 0 ? it : best,
  )
  return { ...calm, fairestOfAll: compareSums(calm.sums, fair.sums) === 0 }
}

/** One flow: the next block as a layer of its own, where a changed place has its price, and all later blocks behind it. */
function nextRound(
  instance: Instance,
  keeper: number | null,
  planned: Round,
  before: Round | null,
  rank: PlaceCosts['rank'],
) {
  const [side, ...later] = instance.sides
  const positions = instance.fieldPositions.length
  const start = { blocks: instance.pastBlocks, bySide: instance.pastBySide }
  const cost = (child: number, position: number) => {
    const stands = before?.[child] ?? OFF
    const changesPosition = stands !== OFF && stands !== position ? 1 : 0
    return (planned[child] === position ? 0 : positions + 1) + changesPosition
  }
  const layers = [{ side: side!, blocks: 1, cost }, ...wholeSides(later)]
  const players = fieldPlayers(instance, keeper)
  const fair = fairestCounts(instance, players, start, layers, { rank, spread: positions * (positions + 2) })
  if (fair === null) return null
  const round = instance.childIds.map(() => OFF)
  for (const place of fair.flow.places) {
    if (place.layer === 0 && fair.flow.net.flow[place.arc]! > 0) round[place.child] = place.position
  }
  const fieldPlacesChanged = players.filter((child) => round[child] !== OFF && round[child] !== planned[child]).length
  return { keeper, round, fieldPlacesChanged, sums: sumsOfFlow(instance, keeper, fair.flow) }
}

/** The next block, and behind it the fairest rest. */
function restOfPlan(upcoming: LineupRequest, next: NextBlock): readonly LineupBlock[] {
  const first = blockOf(upcoming, instanceOf(upcoming), next.keeper, next.round, 0)
  const later = upcomingRequest(upcoming, [first], [])
  const instance = instanceOf(later)
  const plan = fairestPlan(instance, [next.keeper], next.round, AT_ONCE)
  assert(plan !== null, 'the rest of a plan can be filled like its first block')
  return [first, ...plan.rounds.map((round, block) => blockOf(later, instance, next.keeper, round, block))]
}

function roundOfBlock(instance: Instance, block: LineupBlock): Round {
  const positionOf = new Map(block.places.map((place) => [place.childId, place.position]))
  return instance.childIds.map((childId) => instance.fieldPositions.indexOf(positionOf.get(childId) ?? ''))
}

/** The block's goalkeeper, if still available. */
function goalkeeperOf(request: LineupRequest, instance: Instance, block: LineupBlock): number | null {
  const place = block.places.find((it) => it.position === request.goalkeeperPosition)
  const child = instance.childIds.indexOf(place?.childId ?? '')
  return child < 0 ? null : child
}
