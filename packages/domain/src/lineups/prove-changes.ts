import { OFF, type Round } from './instance'
import type { Arrangement } from './rounds'

export type Verdict =
  | { readonly kind: 'none' }
  | { readonly kind: 'found'; readonly rounds: Round[] }
  | { readonly kind: 'unknown' }

/**
 * Looks through all equally fair plans for one with at most `most` changes of position: depth-first over blocks and places, with
 * the fair ranges as bounds. 'none' is a proof; 'unknown' says that the budget of steps ended the search.
 */
export function findPlanWithin(arrangement: Arrangement, most: number, budget: Budget): Verdict {
  const search = createSearch(arrangement, most, budget)
  const found = fillBlock(search, 0, 0)
  if (found === 'unknown') return { kind: 'unknown' }
  return found ? { kind: 'found', rounds: search.rounds.map((round) => [...round]) } : { kind: 'none' }
}

/** Steps left; shared by searches that belong together. */
export type Budget = { steps: number }

type Search = {
  readonly arrangement: Arrangement
  readonly most: number
  readonly budget: Budget
  readonly rounds: number[][]
  /** Field blocks of each child so far, in total and by side. */
  readonly total: number[]
  readonly bySide: readonly [number[], number[]]
  /** Blocks of each side from this one on. */
  readonly left: readonly (readonly [number, number])[]
  readonly able: readonly (readonly number[])[]
  /** Fewest changes with which a state (block, line-up before, counts) was already searched in vain. */
  readonly failed: Map<string, number>
}

type Outcome = boolean | 'unknown'

function createSearch(arrangement: Arrangement, most: number, budget: Budget): Search {
  const { instance, players } = arrangement
  const none = () => instance.childIds.map(() => 0)
  return {
    arrangement,
    most,
    budget,
    rounds: instance.sides.map(() => instance.childIds.map(() => OFF)),
    total: none(),
    bySide: [none(), none()],
    left: [...instance.sides, 0].map((_, block) => {
      const later = instance.sides.slice(block)
      return [later.filter((side) => side === 0).length, later.filter((side) => side === 1).length] as const
    }),
    able: instance.fieldPositions.map((_, position) =>
      players.filter((it) => instance.allowed[it]!.includes(position)),
    ),
    failed: new Map(),
  }
}

function fillBlock(search: Search, block: number, spent: number): Outcome {
  const { instance, opening } = search.arrangement
  if (block === instance.sides.length) return true
  const before = block === 0 ? opening : search.rounds[block - 1]!
  const state = `${block}|${before?.join(',')}|${search.bySide[0].join(',')}|${search.bySide[1].join(',')}`
  const failedWith = search.failed.get(state)
  if (failedWith !== undefined && failedWith <= spent) return false
  const outcome = fillPlace(search, block, 0, spent)
  if (outcome === false) search.failed.set(state, spent)
  return outcome
}

function fillPlace(search: Search, block: number, position: number, spent: number): Outcome {
  if (--search.budget.steps < 0) return 'unknown'
  const { instance, opening, fair } = search.arrangement
  if (position === instance.fieldPositions.length) {
    return canStayFair(search, block + 1) ? fillBlock(search, block + 1, spent) : false
  }
  const side = instance.sides[block]!
  const round = search.rounds[block]!
  const before = block === 0 ? opening : search.rounds[block - 1]!
  for (const child of inOrder(search.able[position]!, before, position)) {
    const changes = before !== null && before[child] !== OFF && before[child] !== position ? 1 : 0
    if (round[child] !== OFF || spent + changes > search.most || !fair.isOpen(child, position, side)) continue
    if (search.total[child]! >= fair.totals.get(child)!.most) continue
    if (search.bySide[side][child]! >= fair.bySide[side].get(child)!.most) continue
    move(search, block, child, position, 1)
    const outcome = fillPlace(search, block, position + 1, spent + changes)
    if (outcome === true) return true
    move(search, block, child, position, -1)
    if (outcome === 'unknown') return outcome
  }
  return false
}

function move(search: Search, block: number, child: number, position: number, by: 1 | -1): void {
  const side = search.arrangement.instance.sides[block]!
  search.rounds[block]![child] = by === 1 ? position : OFF
  search.total[child] = search.total[child]! + by
  search.bySide[side][child] = search.bySide[side][child]! + by
}

/** Whoever stood there comes first. */
function inOrder(able: readonly number[], before: Round | null, position: number): readonly number[] {
  if (before === null) return able
  return [...able].sort((a, b) => Number(before[b] === position) - Number(before[a] === position) || a - b)
}

/** Whether every child can still reach its fair range in the blocks from this one on. */
function canStayFair(search: Search, block: number): boolean {
  const { fair, players } = search.arrangement
  const left = search.left[block]!
  return players.every((child) => {
    const room = ([0, 1] as const).map((side) => {
      const range = fair.bySide[side].get(child)
      if (range === undefined) return 0
      const done = search.bySide[side][child]!
      return done + left[side] < range.least ? -1 : Math.min(left[side], range.most - done)
    })
    if (room[0]! < 0 || room[1]! < 0) return false
    return search.total[child]! + room[0]! + room[1]! >= fair.totals.get(child)!.least
  })
}
