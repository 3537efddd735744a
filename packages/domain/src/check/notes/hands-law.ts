import { GOALKEEPER } from '../../pattern'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'

const HANDS = 'IFAB Laws of the Game, Law 12: hands are the goalkeeper’s alone'
const BACK_PASS =
  'IFAB Laws of the Game, Law 12: a ball kicked on purpose to the goalkeeper by a team-mate may not be handled'

/** Only a goalkeeper throws or rolls the ball, and never one a team-mate kicked to them; a throw-in is anyone's. */
export function handsNotes({ document, timeline }: CheckContext): readonly CheckNote[] {
  return timeline.steps.flatMap((step, index): CheckNote[] => {
    if (step.kind !== 'throw' && step.kind !== 'roll') return []
    if (index === 0 && document.restart === 'throw-in' && step.kind === 'throw') return []
    if (step.actor !== GOALKEEPER) {
      return [handNote(step.stepId, step.actor, HANDS, `${step.actor} may not use the hands: only the goalkeeper may.`)]
    }
    if (index === 0 && (document.restart === 'goalkeeper-hands' || document.restart === 'open-play')) return []
    const sentence =
      index === 0
        ? `${GOALKEEPER} may not use the hands here: this restart is kicked.`
        : `${GOALKEEPER} may not use the hands: a team-mate played the ball back.`
    return [handNote(step.stepId, step.actor, index === 0 ? HANDS : BACK_PASS, sentence)]
  })
}

function handNote(stepId: string, position: string, source: string, sentence: string): CheckNote {
  return {
    code: 'hands-law',
    severity: 'to-fix',
    stepId,
    position,
    value: 1,
    limit: 0,
    unit: 'touches',
    sourceKind: 'published',
    source,
    sentence,
    remedy: null,
  }
}
