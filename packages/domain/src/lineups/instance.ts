import { assert, compareIds } from '../quantities'
import type { BlockSide, LineupRequest } from './types'

export type SideIndex = 0 | 1

export function sideIndex(side: BlockSide): SideIndex {
  return side === 'left' ? 0 : 1
}

/** A request in numbers. Children and positions are in the order of their ids, so that the order of the request decides nothing. */
export type Instance = {
  readonly childIds: readonly string[]
  /** The positions other than the goalkeeper's. */
  readonly fieldPositions: readonly string[]
  /** For each child the field positions of its set, rising. */
  readonly allowed: readonly (readonly number[])[]
  /** Children who may keep goal: the willing for 'yes' first, then for 'sometimes', each by id; null without a goalkeeper. */
  readonly keepers: readonly number[] | null
  readonly pastBlocks: readonly number[]
  readonly pastBySide: readonly [readonly number[], readonly number[]]
  readonly sides: readonly SideIndex[]
}

/** One line-up in numbers: for each child its field position, or OFF. The goalkeeper of the activity is OFF here. */
export type Round = readonly number[]
export const OFF = -1

export function instanceOf(request: LineupRequest): Instance {
  assertWellFormed(request)
  const children = [...request.children].sort((a, b) => compareIds(a.childId, b.childId))
  const fieldPositions = request.positions.filter((it) => it !== request.goalkeeperPosition).sort(compareIds)
  const keepers = children.flatMap((child, index) => {
    const listed = child.positions.some((it) => it.position === request.goalkeeperPosition)
    return listed && child.goalkeeper !== 'no' ? [{ index, rank: child.goalkeeper === 'yes' ? 0 : 1 }] : []
  })
  return {
    childIds: children.map((child) => child.childId),
    fieldPositions,
    allowed: children.map((child) =>
      fieldPositions.flatMap((position, index) =>
        child.positions.some((it) => it.position === position) ? [index] : [],
      ),
    ),
    keepers:
      request.goalkeeperPosition === null
        ? null
        : keepers.sort((a, b) => a.rank - b.rank || a.index - b.index).map((it) => it.index),
    pastBlocks: children.map((child) => child.past.blocks),
    pastBySide: [children.map((child) => child.past.left), children.map((child) => child.past.right)],
    sides: request.blocks.map((block) => sideIndex(block.side)),
  }
}

function assertWellFormed(request: LineupRequest): void {
  assert(new Set(request.positions).size === request.positions.length, 'each position stands once in a line-up')
  assert(new Set(request.children.map((it) => it.childId)).size === request.children.length, 'each child is here once')
  const keeper = request.goalkeeperPosition
  assert(keeper === null || request.positions.includes(keeper), 'the goalkeeper position must be one of the positions')
  for (const child of request.children) {
    assert(child.positions.length <= 3, 'a child has at most three positions in an evening')
    for (const count of [child.past.blocks, child.past.left, child.past.right]) {
      assert(Number.isSafeInteger(count) && count >= 0, 'past blocks are whole numbers, not negative')
    }
  }
}

/** Everyone but the goalkeeper. */
export function fieldPlayers(instance: Instance, keeper: number | null): number[] {
  return instance.childIds.map((_, index) => index).filter((index) => index !== keeper)
}

export function blocksOfSide(instance: Instance, side: SideIndex): number {
  return instance.sides.filter((it) => it === side).length
}
