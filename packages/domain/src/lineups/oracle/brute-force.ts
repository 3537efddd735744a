import type { LineupRequest } from '../types'

export type BruteOptimum = {
  readonly sumOfSquares: number
  readonly sideSumOfSquares: number
  readonly changes: number
}

/** The best of all plans of a tiny request, by looking at every one of them; null when there is none. */
export function bestByBruteForce(request: LineupRequest): BruteOptimum | null {
  const keepers = request.children.flatMap((child, index) => (child.goalkeeper === 'no' ? [] : [index]))
  let best: BruteOptimum | null = null
  for (const keeper of request.goalkeeperPosition === null ? [null] : keepers) {
    const lineups = allLineups(request, keeper)
    const left = request.children.map((child) => child.past.left)
    const right = request.children.map((child) => child.past.right)
    const total = request.children.map((child) => child.past.blocks)
    const extend = (block: number, before: readonly number[] | null, changes: number) => {
      const next = request.blocks[block]
      if (next === undefined) {
        const sideSumOfSquares = squares(left) + squares(right)
        best = better({ sumOfSquares: squares(total), sideSumOfSquares, changes }, best)
        return
      }
      const ofSide = next.side === 'left' ? left : right
      for (const lineup of lineups) {
        for (const child of lineup) add(child, 1, total, ofSide)
        extend(block + 1, lineup, changes + (before === null ? 0 : movedBetween(before, lineup)))
        for (const child of lineup) add(child, -1, total, ofSide)
      }
    }
    extend(0, null, 0)
  }
  return best
}

function better(a: BruteOptimum, b: BruteOptimum | null): BruteOptimum {
  if (b === null) return a
  const difference = a.sumOfSquares - b.sumOfSquares || a.sideSumOfSquares - b.sideSumOfSquares || a.changes - b.changes
  return difference < 0 ? a : b
}

function squares(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count * count, 0)
}

function add(child: number, by: 1 | -1, ...counts: number[][]): void {
  for (const count of counts) count[child] = count[child]! + by
}

/** A line-up is, for each position of the request, the child who stands there. */
function movedBetween(before: readonly number[], after: readonly number[]): number {
  return after.filter((child, position) => before.includes(child) && before[position] !== child).length
}

function allLineups(request: LineupRequest, keeper: number | null): number[][] {
  let partial: number[][] = [[]]
  for (const position of request.positions) {
    const able = request.children.flatMap((child, index) => {
      const inGoal = position === request.goalkeeperPosition
      const mayStand = inGoal ? index === keeper : index !== keeper
      return mayStand && child.positions.some((it) => it.position === position) ? [index] : []
    })
    partial = partial.flatMap((lineup) => able.filter((it) => !lineup.includes(it)).map((it) => [...lineup, it]))
  }
  return partial
}
