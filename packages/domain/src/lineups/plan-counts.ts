import type { LineupBlock, LineupRequest } from './types'

export type SideCounts = { readonly left: number; readonly right: number }

/** Blocks on the field by child, the goalkeeper's among them. */
export function countBlocksByChild(blocks: readonly LineupBlock[]): ReadonlyMap<string, SideCounts> {
  const counts = new Map<string, SideCounts>()
  for (const block of blocks) {
    for (const { childId } of block.places) {
      const before = counts.get(childId) ?? { left: 0, right: 0 }
      counts.set(childId, { ...before, [block.side]: before[block.side] + 1 })
    }
  }
  return counts
}

/** How often a child on the field in two blocks in a row stands at another position in the second. */
export function countPlanChanges(blocks: readonly LineupBlock[]): number {
  let changes = 0
  blocks.forEach((block, index) => {
    const before = new Map(blocks[index - 1]?.places.map((place) => [place.childId, place.position]))
    changes += block.places.filter((it) => before.has(it.childId) && before.get(it.childId) !== it.position).length
  })
  return changes
}

/** The two sums of squares of a plan, past weeks added. */
export function planSums(
  request: LineupRequest,
  blocks: readonly LineupBlock[],
): { readonly squares: number; readonly sideSquares: number } {
  const counts = countBlocksByChild(blocks)
  let squares = 0
  let sideSquares = 0
  for (const { childId, past } of request.children) {
    const { left, right } = counts.get(childId) ?? { left: 0, right: 0 }
    squares += (past.blocks + left + right) ** 2
    sideSquares += (past.left + left) ** 2 + (past.right + right) ** 2
  }
  return { squares, sideSquares }
}
