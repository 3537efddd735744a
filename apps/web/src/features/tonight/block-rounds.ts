import type { PlannedActivity } from '@espalier/domain/session'
import { roundOrder } from '@espalier/domain/session'

/** Which rounds of the activity each line-up plays, from 1: "1 to 4", or "1, 3, 5, 7" where two take turns. */
export function blockRounds(activity: PlannedActivity): readonly (readonly number[])[] {
  const blocks = activity.lineups?.blocks ?? []
  const order = roundOrder(blocks.length, activity.roundsABlock, Math.max(1, activity.takeTurns))
  return blocks.map((_, block) => order.flatMap((played, index) => (played === block ? [index + 1] : [])))
}

/** A row of numbers as short as it goes: "1–4", "1, 3, 5". */
export function roundsText(rounds: readonly number[]): string {
  const [first] = rounds
  const last = rounds.at(-1)
  if (first === undefined || last === undefined) return ''
  if (first === last) return String(first)
  return last - first === rounds.length - 1 ? `${first}–${last}` : rounds.join(', ')
}
