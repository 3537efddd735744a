import { GOALKEEPER } from '../../pattern'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'

/**
 * Some formats forbid the punt and the drop-kick. A lofted kick as the first ball out of the hands is one, unless the
 * goalkeeper puts the ball down before; the document does not say, so this is worth a look and no more.
 */
export function puntNotes({ document, timeline, format }: CheckContext): readonly CheckNote[] {
  if (format.punting.value || document.restart !== 'goalkeeper-hands') return []
  const kick = timeline.steps.find((step) => step.flight.kind !== 'carried')
  if (kick === undefined || kick.actor !== GOALKEEPER || kick.kind !== 'pass' || kick.flight.kind !== 'flies') return []
  return [
    {
      code: 'punt-law',
      severity: 'look-at',
      stepId: kick.stepId,
      position: GOALKEEPER,
      value: 1,
      limit: 0,
      unit: 'touches',
      sourceKind: format.punting.kind,
      source: format.punting.source,
      sentence: `No punt and no drop-kick here: ${GOALKEEPER} rolls or throws the ball, or puts it down before kicking it.`,
      remedy: null,
    },
  ]
}
