import { assert, ok, type Result, refuse } from '../quantities'
import { type Diligence, fairestPlan } from './fairest-plan'
import { instanceOf } from './instance'
import { chooseNextBlock, type NextBlock, PLACES_CHANGED_MOST } from './next-block'
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

const AT_ONCE: Diligence = { deals: 2, refills: 5, proofSteps: 0 }

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
    return ok({
      evening: { ...evening, request, unavailable },
      placesChanged: 0,
      moreNeeded: false,
      fairestOfAll: true,
    })
  }
  const shortage = findShortage(upcoming)
  if (shortage !== null) return refuse(shortage)
  const planned = evening.plan.blocks[evening.playedBlocks]!
  const next = chooseNextBlock(instanceOf(upcoming), request.goalkeeperPosition, planned, played.at(-1) ?? null)
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

/** The next block, and behind it the fairest rest. */
function restOfPlan(upcoming: LineupRequest, next: NextBlock): readonly LineupBlock[] {
  const first = blockOf(upcoming, instanceOf(upcoming), next.keeper, next.round, 0)
  const later = upcomingRequest(upcoming, [first], [])
  const instance = instanceOf(later)
  const plan = fairestPlan(instance, [next.keeper], next.round, AT_ONCE)
  assert(plan !== null, 'the rest of a plan can be filled like its first block')
  return [first, ...plan.rounds.map((round, block) => blockOf(later, instance, next.keeper, round, block))]
}
