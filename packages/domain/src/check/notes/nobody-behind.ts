import { GOALKEEPER, type Position } from '../../pattern'
import { landmarkPoint } from '../../pitch'
import { type Metres, metres, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote, Remedy } from '../note'
import type { TimedStep } from '../timed-step'
import { withRemedies } from '../try-remedy'

/**
 * With the ball out of the own third, somebody besides the goalkeeper stays behind it in case it is lost. Said only where
 * the whole side is drawn (whoever is missing may be the one who stays), and once for each spell it lasts.
 */
export const nobodyBehindNotes = withRemedies(findNobody, stayBehind)

function findNobody(context: CheckContext): readonly CheckNote[] {
  const { document, format, timeline } = context
  if (document.positions.length < format.playersPerSide.value) return []
  const from = stayBehindFrom(context)
  if (from === null) return []
  const limit = context.limits.stayBehindPlayers
  let lasting = false
  return timeline.steps.flatMap((step): CheckNote[] => {
    const before = lasting
    const behind = millimetresOf(step.to.x) > millimetresOf(from) ? countBehind(context, step) : null
    lasting = behind !== null && behind < limit.value
    if (behind === null || !lasting || before) return []
    return [
      {
        code: 'nobody-behind',
        severity: 'look-at',
        stepId: step.stepId,
        position: step.receiver,
        value: behind,
        limit: limit.value,
        unit: 'players',
        sourceKind: limit.kind,
        source: limit.source,
        sentence: `${behind === 0 ? 'Nobody but the goalkeeper stays' : `Only ${behind} of the outfield players stay`} behind the ball: if it is lost here the way to goal is open.`,
        remedy: null,
      },
    ]
  })
}

function countBehind({ playersAt }: CheckContext, step: TimedStep): number {
  const ball = millimetresOf(step.to.x)
  const who = step.receiver ?? step.actor
  const others = playersAt(step.receivedAt)
  return others.filter(
    ({ position, point }) => position !== who && position !== GOALKEEPER && millimetresOf(point.x) < ball,
  ).length
}

/** The share of the whole pitch counts from its halfway line, so that half a pitch has the same place. */
function stayBehindFrom({ space, limits }: CheckContext): Metres | null {
  const halfway = landmarkPoint(space, 'centre-mark')?.x
  return halfway === undefined ? null : metres(halfway * 2 * limits.stayBehindShare.value)
}

/** One of the runners of this step stays. */
function stayBehind(context: CheckContext, note: CheckNote): readonly Remedy[] {
  const step = context.document.steps.find((each) => each.stepId === note.stepId)
  const runners: readonly Position[] = step?.runs.map((run) => run.position) ?? []
  return runners
    .filter((position) => position !== note.position && position !== GOALKEEPER)
    .map((position) => ({
      kind: 'drop-run',
      stepId: step?.stepId ?? '',
      position,
      sentence: `Let ${position} stay behind the ball.`,
    }))
}
