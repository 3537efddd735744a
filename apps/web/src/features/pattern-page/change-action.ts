import {
  actorOf,
  type BallAction,
  GOALKEEPER,
  type PatternDocument,
  type Position,
  placeOf,
  receiverOf,
  type Step,
} from '@espalier/domain/pattern'
import { nominalSpace, spotPoint } from '@espalier/domain/pitch'
import { unreachable } from '@espalier/domain/quantities'
import { furtherUp, standsAt } from './step-path'

export const ACTION_KINDS = [
  'pass',
  'set-back',
  'carry',
  'dribble-past',
  'throw',
  'roll',
  'dummy',
  'shot',
] as const satisfies readonly BallAction['kind'][]

/** How far a new carry goes before its place is written. */
const CARRY_METRES = 5

/** The same moment as another kind of action: whoever had the ball has it still, and what still fits is kept. */
export function actionOfKind(
  document: PatternDocument,
  before: readonly Step[],
  action: BallAction,
  kind: BallAction['kind'],
): BallAction {
  if (kind === action.kind) return action
  const by = actorOf(action)
  const receiver = receiverOf(action)
  const to = receiver === null || receiver === by ? likelyReceiver(document, before, by) : receiver
  const place = placeOf(action) ?? furtherUp(standsAt(document, before, by), CARRY_METRES)
  const into = 'into' in action ? action.into : ({ kind: 'feet' } as const)
  switch (kind) {
    case 'pass':
      return { kind, from: by, to, into, height: 'ground', touches: 2, foot: 'either' }
    case 'set-back':
      return { kind, from: by, to, into, foot: 'either' }
    case 'throw':
    case 'roll':
      return { kind, from: by, to, into }
    case 'carry':
      return { kind, by, to: place, at: null }
    case 'dribble-past':
      return { kind, by, to: place, past: document.obstacles[0]?.obstacleId ?? '' }
    case 'dummy':
      return { kind, by, to }
    case 'shot':
      return { kind, by, target: document.targets[0]?.targetId ?? '' }
    default:
      return unreachable(kind)
  }
}

/** The plainest next action: a pass to feet. */
export function newPass(document: PatternDocument, before: readonly Step[], by: Position): BallAction {
  const to = likelyReceiver(document, before, by)
  return { kind: 'pass', from: by, to, into: { kind: 'feet' }, height: 'ground', touches: 2, foot: 'either' }
}

/** A carry keeps the ball with whoever has it, so that it can be put between two steps without touching either. */
export function newCarry(document: PatternDocument, before: readonly Step[], by: Position): BallAction {
  return { kind: 'carry', by, to: furtherUp(standsAt(document, before, by), CARRY_METRES), at: null }
}

/** Nearest outfield team-mate who is not who has just played the ball; a first guess that the form changes. */
export function likelyReceiver(document: PatternDocument, before: readonly Step[], by: Position): Position {
  const space = nominalSpace(document.formatId)
  const last = before.at(-1)
  const justPlayed = last === undefined ? null : actorOf(last.action)
  const here = spotPoint(space, standsAt(document, before, by))
  const others = document.positions.map((placed) => placed.position).filter((position) => position !== by)
  const likely = others.filter((position) => position !== GOALKEEPER && position !== justPlayed)
  const farFrom = (position: Position): number => {
    const there = spotPoint(space, standsAt(document, before, position))
    return here === null || there === null ? Number.POSITIVE_INFINITY : Math.hypot(there.x - here.x, there.y - here.y)
  }
  const candidates = likely.length > 0 ? likely : others
  // On equal distance the side the pattern is written for comes first, as a director would draw it.
  const side = document.writtenFor === 'left' ? 'L' : 'R'
  const ranked = [...candidates].sort(
    (one, other) => farFrom(one) - farFrom(other) || Number(other.startsWith(side)) - Number(one.startsWith(side)),
  )
  return ranked[0] ?? by
}
