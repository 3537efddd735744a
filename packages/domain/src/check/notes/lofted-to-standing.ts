import { distance } from '../../geometry'
import type { Position } from '../../pattern'
import { type Millimetres, metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import { isHeadingAllowed } from '../heading'
import type { CheckNote } from '../note'
import type { TimedStep } from '../timed-step'
import { playerAt } from '../timeline'

/**
 * A ball in the air to a child who stands waiting for it invites a header. Where heading is not allowed that is worth a
 * look, always: play it low, or into space. The club's and local rules decide.
 */
export function loftedToStandingNotes(context: CheckContext): readonly CheckNote[] {
  const allowed = isHeadingAllowed(context)
  if (allowed.value) return []
  return standingReceivers(context).map(({ step, receiver, movedMm }) => ({
    code: 'lofted-to-standing',
    severity: 'look-at',
    stepId: step.stepId,
    position: receiver,
    value: metresOf(movedMm),
    limit: 1,
    unit: 'm',
    sourceKind: allowed.kind,
    source: allowed.source,
    sentence: `A ball in the air to ${receiver}, who stands and waits, ends at the head. Play it low or into space; your club's and local rules decide.`,
    remedy: null,
  }))
}

export type StandingReceiver = {
  readonly step: TimedStep
  readonly receiver: Position
  /** How far the receiver comes for the ball. */
  readonly movedMm: Millimetres
}

/** Whom a pass in the air finds standing. Who has to come a step for it meets it at the feet. */
export function standingReceivers({ timeline }: CheckContext): readonly StandingReceiver[] {
  return timeline.steps.flatMap((step): StandingReceiver[] => {
    const { receiver } = step
    if (receiver === null || step.flight.kind !== 'flies' || step.kind !== 'pass') return []
    const movedMm = millimetresOf(distance(playerAt(timeline, receiver, step.startsAt), step.to))
    return movedMm >= 1000 ? [] : [{ step, receiver, movedMm }]
  })
}
