import { distance } from '../../geometry'
import { metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import { sayMetres } from '../wording'

/** Accuracy and first touch bind long before strength: a pass on the ground longer than most of this age play cleanly. */
export function passTooLongNotes(context: CheckContext): readonly CheckNote[] {
  const { profile } = context
  const limit = profile.passLengthMax
  return notesOfSteps(context, (step): CheckNote[] => {
    if (step.kind !== 'pass' && step.kind !== 'set-back') return []
    const length = millimetresOf(distance(step.from, step.to))
    if (step.flight.kind !== 'rolls' || length <= millimetresOf(limit.value)) return []
    return [
      {
        code: 'pass-too-long',
        severity: 'look-at',
        stepId: step.stepId,
        position: step.actor,
        value: metresOf(length),
        limit: limit.value,
        unit: 'm',
        sourceKind: limit.kind,
        source: limit.source,
        sentence: `${step.actor} plays ${sayMetres(metresOf(length))} along the ground. Most ${profile.profileId === 'adult' ? 'adults' : `${profile.profileId}s`} find a team-mate up to ${limit.value} m.`,
        remedy: null,
      },
    ]
  })
}
