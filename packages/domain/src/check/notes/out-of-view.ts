import { angleDegrees, containsPoint, distance, type Point, point } from '../../geometry'
import { spaceRectangle } from '../../pitch'
import { millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import { drawnOpponents } from '../drawn-opponents'
import type { CheckNote, Remedy } from '../note'
import { spotFor } from '../places'
import type { TimedStep } from '../timed-step'
import { withRemedies } from '../try-remedy'

/**
 * The ball comes from so far behind the next target that a child cannot see both. With time for two touches they look and
 * turn, which the timeline counts; so it is said only of a ball played at once, and where an opponent is too near to turn.
 * A set-back is played facing the ball and needs no view of what is behind.
 */
export const outOfViewNotes = withRemedies(findOutOfView, stepAside)

type Reception = { readonly step: TimedStep; readonly next: TimedStep; readonly atOnce: boolean }

function receptions({ document, timeline }: CheckContext): readonly Reception[] {
  return timeline.steps.flatMap((step, index): Reception[] => {
    const next = timeline.steps[index + 1]
    if (next === undefined || step.receiver === null || step.receiver !== next.actor) return []
    if (step.flight.kind === 'carried' || (next.kind !== 'pass' && next.kind !== 'shot')) return []
    const action = document.steps[index + 1]?.action
    return [{ step, next, atOnce: action?.kind === 'pass' && action.touches === 1 }]
  })
}

/** Whole degrees: a comparison must come out the same on every machine. */
function viewDegrees(at: Point, from: Point, target: Point): number {
  return Math.round(angleDegrees(at, from, target))
}

function findOutOfView(context: CheckContext): readonly CheckNote[] {
  const { viewDegrees: limit, turnRoomMetres } = context.limits
  return receptions(context).flatMap(({ step, next, atOnce }): CheckNote[] => {
    const angle = viewDegrees(step.to, step.from, next.to)
    if (angle <= limit.value) return []
    const pressed = drawnOpponents(context).some(
      ({ at }) => millimetresOf(distance(at, step.to)) < millimetresOf(turnRoomMetres.value),
    )
    if (!atOnce && !pressed) return []
    const why = atOnce ? 'plays at once' : 'has an opponent too near to turn'
    return [
      {
        code: 'out-of-view',
        severity: 'look-at',
        stepId: step.stepId,
        position: next.actor,
        value: angle,
        limit: limit.value,
        unit: 'degrees',
        sourceKind: limit.kind,
        source: limit.source,
        sentence: `${next.actor} ${why} and cannot see the ball and ${next.receiver ?? 'the target'} at once: receive more side on, off the line between them.`,
        remedy: null,
      },
    ]
  })
}

/** How far aside a receiver is tried, the least first (habit: common practice, no source). */
const ASIDE_METRES = [1, 2, 3, 4, 5, 6] as const

/** The receiver comes off the line between ball and next target, to the side they are on already where there is one. */
function stepAside(context: CheckContext, note: CheckNote): readonly Remedy[] {
  const found = receptions(context).find(({ step }) => step.stepId === note.stepId)
  const action = context.document.steps.find((each) => each.stepId === note.stepId)?.action
  if (found === undefined || action === undefined || !('into' in action) || action.into.kind === 'space') return []
  const { step, next } = found
  const length = distance(step.from, next.to)
  if (length === 0) return []
  const across = { x: -(next.to.y - step.from.y) / length, y: (next.to.x - step.from.x) / length }
  const bounds = spaceRectangle(context.space)
  return ASIDE_METRES.flatMap((aside) =>
    [aside, -aside].flatMap((signed): Remedy[] => {
      const place = point(step.to.x + across.x * signed, step.to.y + across.y * signed)
      if (!containsPoint(bounds, place)) return []
      const spot = spotFor(context.document, context.space, place)
      const sentence = `Let ${next.actor} come off the line between ${step.actor} and ${next.receiver ?? 'the target'}.`
      return [{ kind: 'come-to', stepId: step.stepId, position: next.actor, spot, start: 'before-the-ball', sentence }]
    }),
  )
}
