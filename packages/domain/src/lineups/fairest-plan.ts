import { assert } from '../quantities'
import { countChanges } from './changes'
import { type Contender, compareSums, fairestGoalkeepers, sumsOf } from './goalkeeper'
import { arrangeRounds } from './improve-rounds'
import { type Instance, OFF, type Round } from './instance'
import { type Budget, findPlanWithin } from './prove-changes'
import type { Arrangement } from './rounds'

/** How much looking for fewer changes, and proving that there are none, may cost: counted work, never time. */
export type Diligence = { readonly deals: number; readonly refills: number; readonly proofSteps: number }

export type FairestPlan = {
  readonly keeper: number | null
  readonly rounds: readonly Round[]
  readonly changes: number
  readonly changesProven: boolean
}

/** Fairest first, then the fewest changes after `opening`, the line-up already on the field. Null when it cannot be filled. */
export function fairestPlan(
  instance: Instance,
  keepers: readonly (number | null)[],
  opening: Round | null,
  diligence: Diligence,
): FairestPlan | null {
  const contenders = fairestGoalkeepers(instance, keepers)
  if (contenders.length === 0) return null
  const deals = Math.max(1, Math.floor(diligence.deals / contenders.length))
  let best: FairestPlan | null = null
  for (const contender of contenders) {
    const arrangement = { instance, players: contender.players, fair: contender.fair, opening }
    const rounds = arrangeRounds(arrangement, { deals, refills: diligence.refills })
    const changes = countChanges(opening, rounds)
    if (best === null || changes < best.changes) {
      best = { keeper: contender.keeper, rounds, changes, changesProven: changes === 0 }
    }
    if (changes === 0) break
  }
  assert(best !== null, 'a contender always yields a plan')
  const proven = proveOrImprove(instance, contenders, opening, best, { steps: diligence.proofSteps })
  assertAsFair(instance, contenders[0]!, proven)
  return proven
}

/** Asks for one change fewer until that is found impossible with every goalkeeper, or the steps run out. */
function proveOrImprove(
  instance: Instance,
  contenders: readonly Contender[],
  opening: Round | null,
  found: FairestPlan,
  budget: Budget,
): FairestPlan {
  let best = found
  for (const contender of contenders) {
    const arrangement: Arrangement = { instance, players: contender.players, fair: contender.fair, opening }
    while (best.changes > 0) {
      const verdict = findPlanWithin(arrangement, best.changes - 1, budget)
      if (verdict.kind === 'unknown') return best
      if (verdict.kind === 'none') break
      const changes = countChanges(opening, verdict.rounds)
      best = { keeper: contender.keeper, rounds: verdict.rounds, changes, changesProven: false }
    }
  }
  return { ...best, changesProven: true }
}

/** The proof of fairness is the flow's; this guards the way from counts to line-ups. */
function assertAsFair(instance: Instance, contender: Contender, plan: FairestPlan): void {
  const counts = countsOf(instance, plan.keeper, plan.rounds)
  assert(compareSums(sumsOf(instance, counts), contender.sums) === 0, 'line-ups must be as fair as their counts')
}

/** Blocks by side and child, the goalkeeper's among them. */
export function countsOf(
  instance: Instance,
  keeper: number | null,
  rounds: readonly Round[],
): readonly [number[], number[]] {
  const counts = [instance.childIds.map(() => 0), instance.childIds.map(() => 0)] as const
  rounds.forEach((round, block) => {
    const ofSide = counts[instance.sides[block]!]
    round.forEach((position, child) => {
      if (position !== OFF || child === keeper) ofSide[child] = ofSide[child]! + 1
    })
  })
  return counts
}
