import { GOALKEEPER } from '../../pattern'
import { metresOf } from '../../quantities'
import { outsideByMm, ownArea } from '../areas'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import type { TimedStep } from '../timed-step'
import { sayMetres } from '../wording'

const HANDS = 'IFAB Laws of the Game, Law 12: hands are the goalkeeper’s alone'
const OWN_AREA = 'IFAB Laws of the Game, Law 12: the goalkeeper’s hands end with the own penalty area'
const AGAIN =
  'IFAB Laws of the Game, Law 12: once released, the ball is not handled again before another player has touched it'
const BACK_PASS =
  'IFAB Laws of the Game, Law 12: a ball kicked on purpose to the goalkeeper by a team-mate may not be handled'
const FROM_THROW_IN =
  'IFAB Laws of the Game, Law 12: a ball straight from a team-mate’s throw-in may not be handled by the goalkeeper'

/**
 * Only a goalkeeper throws or rolls the ball, inside the own penalty area, and never one a team-mate kicked or threw in to
 * them; a throw-in is anyone's.
 */
export function handsNotes(context: CheckContext): readonly CheckNote[] {
  const { document } = context
  return notesOfSteps(context, (step, index): CheckNote[] => {
    if (step.kind !== 'throw' && step.kind !== 'roll') return []
    if (index === 0 && document.restart === 'throw-in' && step.kind === 'throw') return []
    if (step.actor !== GOALKEEPER) {
      return [handNote(step, HANDS, `${step.actor} may not use the hands: only the goalkeeper may.`)]
    }
    const handled = isInHands(context, index) ? null : handledNote(context, step, index)
    return handled === null ? outsideNotes(context, step) : [handled]
  })
}

/** From the restart on in the hands, carried there or not; in open play nobody says how the ball came. */
function isInHands({ document, timeline }: CheckContext, index: number): boolean {
  if (document.restart !== 'goalkeeper-hands' && document.restart !== 'open-play') return false
  return timeline.steps.slice(0, index).every((step) => step.actor === GOALKEEPER && step.flight.kind === 'carried')
}

function handledNote({ document, timeline }: CheckContext, step: TimedStep, index: number): CheckNote {
  if (index === 0) return handNote(step, HANDS, `${GOALKEEPER} may not use the hands here: this restart is kicked.`)
  const played = timeline.steps.slice(0, index).findLast((each) => each.flight.kind !== 'carried')
  if (played === undefined || played.actor === GOALKEEPER) {
    return handNote(step, AGAIN, `${GOALKEEPER} may not take up the ball again before somebody else has touched it.`)
  }
  if (played.kind === 'throw' && played === timeline.steps[0] && document.restart === 'throw-in') {
    return handNote(
      step,
      FROM_THROW_IN,
      `${GOALKEEPER} may not use the hands: the ball comes from a team-mate's throw-in.`,
    )
  }
  return handNote(step, BACK_PASS, `${GOALKEEPER} may not use the hands: a team-mate played the ball back.`)
}

function outsideNotes({ format }: CheckContext, step: TimedStep): CheckNote[] {
  if (format.penaltyArea === null) return []
  const outside = outsideByMm(ownArea(format.penaltyArea.value), step.from)
  if (outside <= 0) return []
  const sentence = `${GOALKEEPER} uses the hands ${sayMetres(metresOf(outside))} outside the penalty area.`
  return [{ ...handNote(step, OWN_AREA, sentence), value: metresOf(outside), unit: 'm' }]
}

function handNote({ stepId, actor }: TimedStep, source: string, sentence: string): CheckNote {
  return {
    code: 'hands-law',
    severity: 'to-fix',
    stepId,
    position: actor,
    value: 1,
    limit: 0,
    unit: 'touches',
    sourceKind: 'published',
    source,
    sentence,
    remedy: null,
  }
}
