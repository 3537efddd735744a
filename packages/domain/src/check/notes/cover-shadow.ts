import { distance, distanceToSegment } from '../../geometry'
import { RUN_STARTS } from '../../pattern'
import { metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import { drawnOpponents } from '../drawn-opponents'
import { measureFromLane } from '../lane'
import type { CheckNote, Remedy } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import type { TimedStep } from '../timed-step'
import { playerAt } from '../timeline'
import { withRemedies } from '../try-remedy'
import { sayMetres } from '../wording'

/**
 * The receiver stands behind an opponent when the ball is played: the passer cannot see whom to play to, although the ball
 * goes past the opponent to where they meet. Silent where the opponent stands in the ball's own way, which the closed lane
 * says, and for balls through the air, which go over the opponent.
 */
export const coverShadowNotes = withRemedies(findHidden, earlierRuns)

function findHidden(context: CheckContext): readonly CheckNote[] {
  const opponents = drawnOpponents(context)
  if (opponents.length === 0) return []
  return notesOfSteps(context, (step) => hiddenAt(context, step, opponents))
}

function hiddenAt(
  context: CheckContext,
  step: TimedStep,
  opponents: ReturnType<typeof drawnOpponents>,
): readonly CheckNote[] {
  const { receiver } = step
  if (receiver === null || step.flight.kind !== 'rolls' || step.kind === 'dummy') return []
  const limit = context.limits.shadowMetres
  const seen = playerAt(context.timeline, receiver, step.startsAt)
  const length = distance(step.from, seen)
  const hiding = opponents.flatMap(({ at }) => {
    const { along, off } = measureFromLane(step.from, seen, at)
    const offMm = millimetresOf(off)
    if (along <= 0 || along >= length || offMm >= millimetresOf(limit.value)) return []
    const fromBall = millimetresOf(distanceToSegment(at, { from: step.from, to: step.to }))
    return fromBall < millimetresOf(limit.value) ? [] : [offMm]
  })
  const least = hiding.sort((one, other) => one - other)[0]
  if (least === undefined) return []
  const off = metresOf(least)
  return [
    {
      code: 'cover-shadow',
      severity: 'look-at',
      stepId: step.stepId,
      position: receiver,
      value: off,
      limit: limit.value,
      unit: 'm',
      sourceKind: limit.kind,
      source: limit.source,
      sentence: `${receiver} stands behind an opponent as ${step.actor} plays, ${sayMetres(off)} off the line between them: move out before the ball.`,
      remedy: null,
    },
  ]
}

/** The latest earlier start of the receiver's own run. */
function earlierRuns(context: CheckContext, note: CheckNote): readonly Remedy[] {
  const step = context.document.steps.find((each) => each.stepId === note.stepId)
  const run = step?.runs.find((each) => each.position === note.position)
  if (step === undefined || run === undefined) return []
  const { position } = run
  return RUN_STARTS.slice(0, RUN_STARTS.indexOf(run.start))
    .reverse()
    .map((start) => ({
      kind: 'start-run',
      stepId: step.stepId,
      position,
      start,
      sentence: `Start the run of ${position} earlier, out of the shadow.`,
    }))
}
