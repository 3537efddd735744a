import { assert, ok, type Result, refuse } from '../quantities'
import { countsOf, type Diligence, fairestPlan } from './fairest-plan'
import { sumsOf } from './goalkeeper'
import { type Instance, instanceOf, type Round } from './instance'
import { findShortage } from './shortage'
import type { LineupBlock, LineupPlan, LineupRefusal, LineupRequest } from './types'

const EVENING: Diligence = { deals: 16, refills: 8, proofSteps: 150_000 }

/**
 * The line-ups of an activity: every position filled in every block, one goalkeeper throughout. Exact in this order: smallest sum
 * of squares of blocks per child, past weeks added; then smallest sum of squares per child and side, past weeks added. Then the
 * fewest changes of position that could be found, with a word on whether fewer are proven impossible. Equal plans: a goalkeeper
 * who says 'yes' before one who says 'sometimes', then by id.
 */
export function solveLineups(request: LineupRequest): Result<LineupPlan, LineupRefusal> {
  const shortage = findShortage(request)
  if (shortage !== null) return refuse(shortage)
  const instance = instanceOf(request)
  const plan = fairestPlan(instance, instance.keepers ?? [null], null, EVENING)
  assert(plan !== null, 'a line-up without a shortage can be filled')
  const sums = sumsOf(instance, countsOf(instance, plan.keeper, plan.rounds))
  return ok({
    blocks: plan.rounds.map((round, block) => blockOf(request, instance, plan.keeper, round, block)),
    sumOfSquares: sums.squares,
    sideSumOfSquares: sums.sideSquares,
    changes: plan.changes,
    fairnessProven: true,
    changesProven: plan.changesProven,
  })
}

/** A line-up in words: ids and positions in place of numbers. */
export function blockOf(
  request: LineupRequest,
  instance: Instance,
  keeper: number | null,
  round: Round,
  block: number,
): LineupBlock {
  const childAt = new Map<string, number>()
  round.forEach((position, child) => {
    if (position >= 0) childAt.set(instance.fieldPositions[position]!, child)
  })
  if (keeper !== null && request.goalkeeperPosition !== null) childAt.set(request.goalkeeperPosition, keeper)
  const places = request.positions.map((position) => {
    const child = childAt.get(position)
    assert(child !== undefined, 'every position is filled in every block')
    return { position, childId: instance.childIds[child]! }
  })
  const on = new Set(places.map((place) => place.childId))
  return {
    side: instance.sides[block] === 0 ? 'left' : 'right',
    places,
    off: instance.childIds.filter((id) => !on.has(id)),
  }
}
