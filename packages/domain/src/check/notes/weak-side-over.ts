import type { Point } from '../../geometry'
import { GOALKEEPER, type Position } from '../../pattern'
import { type Metres, metres, metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import type { TimedStep } from '../timed-step'
import { sayMetres } from '../wording'

/**
 * On the side away from the ball the centre back and the wide player come over, up to the middle and not past it, or nobody
 * is there when the ball changes sides. Off unless the TD asks: others let the far side come in. Named once a player.
 */
export function weakSideOverNotes(context: CheckContext): readonly CheckNote[] {
  const limit = context.limits.weakSideMetres
  if (limit === null) return []
  const sides = startingSides(context)
  const named = new Set<Position>()
  return context.timeline.steps.flatMap((step, index) => {
    const ball = sideOf(context, step.to)
    const busy = busyIn(context, index)
    return context.playersAt(step.receivedAt).flatMap(({ position, point }): CheckNote[] => {
      const over = millimetresOf(metres(point.y * ball))
      const isWeak = ball !== 0 && sides.get(position) === -ball && !busy.has(position)
      if (!isWeak || named.has(position) || over <= millimetresOf(limit.value)) return []
      named.add(position)
      return [overNote(step, position, metresOf(over), limit)]
    })
  })
}

type Side = -1 | 0 | 1

/** Left is −1, right is 1; in the middle is no side. */
function sideOf({ limits }: CheckContext, { y }: Point): Side {
  if (millimetresOf(metres(Math.abs(y))) <= millimetresOf(limits.sideMetres.value)) return 0
  return y < 0 ? -1 : 1
}

function startingSides(context: CheckContext): ReadonlyMap<Position, Side> {
  const outfield = context.document.positions.filter(({ position }) => position !== GOALKEEPER)
  return new Map(outfield.map(({ position, spot }) => [position, sideOf(context, context.place(spot))]))
}

/** Whoever has a part in this ball or the next is where the pattern wants them. */
function busyIn({ timeline }: CheckContext, index: number): ReadonlySet<Position | null> {
  const steps = [timeline.steps[index], timeline.steps[index + 1]]
  return new Set(steps.flatMap((step) => (step === undefined ? [] : [step.actor, step.receiver])))
}

function overNote(
  step: TimedStep,
  position: Position,
  over: Metres,
  limit: NonNullable<CheckContext['limits']['weakSideMetres']>,
): CheckNote {
  return {
    code: 'weak-side-over',
    severity: 'note',
    stepId: step.stepId,
    position,
    value: over,
    limit: limit.value,
    unit: 'm',
    sourceKind: limit.kind,
    source: limit.source,
    sentence: `${position} comes ${sayMetres(over)} past the middle while the ball is on the other side: come over, not past it.`,
    remedy: null,
  }
}
