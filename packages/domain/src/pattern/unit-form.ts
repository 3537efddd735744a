import { actorOf, GOALKEEPER, receiverOf } from './actions'
import type { PatternDocument, Position } from './document'
import { type EndedAtGates, endAtGates } from './end-at-gates'

export const UNIT_SIZES = [4, 5, 6] as const
export type UnitSize = (typeof UNIT_SIZES)[number]

/** A pattern for a few players: its own document, which draws, scripts and checks like any other. */
export type UnitForm = EndedAtGates & {
  /** Who plays, in the order of the pattern; fewer than asked where the pattern places fewer. */
  readonly players: readonly Position[]
}

/**
 * A pattern for four to six players: its first steps, as far as these players carry them, and a gate where the ball would
 * go on to somebody who is missing. The players are those whom the ball comes to first; places left go to those who run or
 * answer a look, then in the order of the formation, from the back. Whatever nobody is left to do goes.
 * The document must have passed `checkShape`; the form passes it too.
 */
export function unitForm(document: PatternDocument, size: UnitSize): UnitForm {
  const players = choosePlayers(document, size)
  const left = { isHere: (position: Position) => players.has(position), isIn: () => true }
  return {
    ...endAtGates(document, { ...left, gateFor: (spot) => spot }),
    players: document.positions.map((each) => each.position).filter(left.isHere),
  }
}

function choosePlayers(document: PatternDocument, size: UnitSize): ReadonlySet<Position> {
  const chosen = new Set<Position>()
  const add = (position: Position | null) => {
    if (position !== null && chosen.size < size) chosen.add(position)
  }
  for (const step of document.steps) {
    add(actorOf(step.action))
    const receiver = receiverOf(step.action)
    add(receiver)
    // Behind the first player who is missing the ball goes no further: later receivers would stand about.
    if (receiver !== null && !chosen.has(receiver)) break
  }
  for (const step of document.steps) for (const run of step.runs) add(run.position)
  for (const look of document.looks) for (const answer of look.answers) add(answer.about)
  add(document.positions.some((each) => each.position === GOALKEEPER) ? GOALKEEPER : null)
  for (const { position } of document.positions) add(position)
  return chosen
}
