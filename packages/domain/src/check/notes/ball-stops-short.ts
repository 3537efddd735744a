import { metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import { sayMetres } from '../wording'

/** The hardest kick or throw of this age does not carry the ball there. */
export function ballStopsShortNotes(context: CheckContext): readonly CheckNote[] {
  const { profile, limits } = context
  return notesOfSteps(context, (step): CheckNote[] => {
    const short = millimetresOf(step.shortBy)
    if (short <= millimetresOf(limits.shortMetres.value)) return []
    const speed = step.kind === 'throw' || step.kind === 'roll' ? profile.throwSpeedMax : profile.kickSpeedMax
    const whom = step.receiver === null ? 'the target' : step.receiver
    return [
      {
        code: 'ball-stops-short',
        severity: 'to-fix',
        stepId: step.stepId,
        position: step.actor,
        value: metresOf(short),
        limit: limits.shortMetres.value,
        unit: 'm',
        sourceKind: speed.kind,
        source: speed.source,
        sentence: `The ball from ${step.actor} ends ${sayMetres(metresOf(short))} short of ${whom}, played as hard as this age can.`,
        remedy: null,
      },
    ]
  })
}
