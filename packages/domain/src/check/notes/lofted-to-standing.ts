import { distance } from '../../geometry'
import { metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { playerAt } from '../timeline'

/**
 * A ball in the air to a child who stands waiting for it invites a header. Where heading is not allowed that is worth a
 * look, always: play it low, or into space. The club's and local rules decide.
 */
export function loftedToStandingNotes({ format, timeline }: CheckContext): readonly CheckNote[] {
  const { headingAllowed } = format
  if (headingAllowed.value) return []
  return timeline.steps.flatMap((step): CheckNote[] => {
    if (step.receiver === null || step.flight.kind !== 'flies' || step.kind !== 'pass') return []
    const moved = distance(playerAt(timeline, step.receiver, step.startsAt), step.to)
    // Who has to come a step for it meets it at the feet.
    if (millimetresOf(moved) >= 1000) return []
    return [
      {
        code: 'lofted-to-standing',
        severity: 'look-at',
        stepId: step.stepId,
        position: step.receiver,
        value: metresOf(millimetresOf(moved)),
        limit: 1,
        unit: 'm',
        sourceKind: headingAllowed.kind,
        source: headingAllowed.source,
        sentence: `A ball in the air to ${step.receiver}, who stands and waits, ends at the head. Play it low or into space; your club's and local rules decide.`,
        remedy: null,
      },
    ]
  })
}
