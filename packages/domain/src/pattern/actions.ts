import type { Spot } from '../pitch'
import { unreachable } from '../quantities'
import type { BallAction, PatternDocument, Position, Step } from './document'

/** The position that keeps goal. The club may show its own word; the code is the same everywhere. */
export const GOALKEEPER: Position = 'GK'

/** Who plays the ball in this action. */
export function actorOf(action: BallAction): Position {
  switch (action.kind) {
    case 'pass':
    case 'set-back':
    case 'throw':
    case 'roll':
      return action.from
    case 'carry':
    case 'dribble-past':
    case 'dummy':
    case 'shot':
      return action.by
    default:
      return unreachable(action)
  }
}

/** Who has the ball once the action is over; null after a shot. */
export function receiverOf(action: BallAction): Position | null {
  switch (action.kind) {
    case 'pass':
    case 'set-back':
    case 'throw':
    case 'roll':
    case 'dummy':
      return action.to
    case 'carry':
    case 'dribble-past':
      return action.by
    case 'shot':
      return null
    default:
      return unreachable(action)
  }
}

/** The place the action itself names: where a carry ends or a ball into space is met; null where the receiver stands. */
export function placeOf(action: BallAction): Spot | null {
  switch (action.kind) {
    case 'pass':
    case 'set-back':
    case 'throw':
    case 'roll':
      return action.into.kind === 'space' ? action.into.spot : null
    case 'carry':
    case 'dribble-past':
      return action.to
    case 'dummy':
    case 'shot':
      return null
    default:
      return unreachable(action)
  }
}

/** Every step of a document with the JSON pointer (RFC 6901) to it: the trunk first, then the answers of its looks. */
export function listSteps(document: PatternDocument): readonly { readonly step: Step; readonly pointer: string }[] {
  const trunk = document.steps.map((step, index) => ({ step, pointer: `/steps/${index}` }))
  const answers = document.looks.flatMap((look, lookIndex) =>
    look.answers.flatMap((answer, answerIndex) =>
      answer.steps.map((step, index) => ({
        step,
        pointer: `/looks/${lookIndex}/answers/${answerIndex}/steps/${index}`,
      })),
    ),
  )
  return [...trunk, ...answers]
}
