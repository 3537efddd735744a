import type { LineupBlock } from '../lineups'

/**
 * The rounds in the order they are played, as indexes of blocks: a block's rounds one after the other, or, where line-ups take
 * turns, one round of each of the neighbouring blocks in turn.
 */
export function roundOrder(blocks: number, roundsABlock: number, takeTurns: number): readonly number[] {
  const order: number[] = []
  for (let first = 0; first < blocks; first += takeTurns) {
    const together = Math.min(takeTurns, blocks - first)
    for (let round = 0; round < roundsABlock; round += 1) {
      for (let turn = 0; turn < together; turn += 1) order.push(first + turn)
    }
  }
  return order
}

/**
 * The most rounds in a row that any child neither plays nor defends. Of those off, whoever has waited longest defends, the
 * first by id where several have.
 */
export function longestWaitRounds(
  blocks: readonly Pick<LineupBlock, 'off'>[],
  opponents: number,
  roundsABlock: number,
  takeTurns: number,
): number {
  let longest = 0
  let waits = new Map<string, number>()
  for (const index of roundOrder(blocks.length, roundsABlock, takeTurns)) {
    const waited = (id: string) => waits.get(id) ?? 0
    const off = blocks[index]?.off ?? []
    const wait = off.toSorted((a, b) => waited(b) - waited(a)).slice(opponents)
    waits = new Map(wait.map((id) => [id, waited(id) + 1]))
    longest = Math.max(longest, ...waits.values())
  }
  return longest
}
