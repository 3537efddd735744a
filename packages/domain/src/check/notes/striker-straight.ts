import { angleDegrees, type Point } from '../../geometry'
import { GOALKEEPER, type Position } from '../../pattern'
import { type Millimetres, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import type { TimedStep } from '../timed-step'

/**
 * A striker who receives from the midfielder stands off the line of the pass before, never straight behind: the midfielder
 * then sees both with an open body. Off unless the TD asks. Who is striker and midfielder follows from where they start, not
 * from what they are called.
 */
export function strikerStraightNotes(context: CheckContext): readonly CheckNote[] {
  const limit = context.limits.strikerOffDegrees
  if (limit === null) return []
  const lines = linesOf(context)
  return context.timeline.steps.flatMap((step, index): CheckNote[] => {
    const before = context.timeline.steps[index - 1]
    if (before === undefined || !isBall(before) || !isBall(step) || before.receiver !== step.actor) return []
    if (step.receiver === null || !lines.highest.has(step.receiver) || !lines.between.has(step.actor)) return []
    const off = offLine(before.from, step.from, step.to)
    if (off >= limit.value) return []
    return [
      {
        code: 'striker-straight',
        severity: 'note',
        stepId: step.stepId,
        position: step.receiver,
        value: off,
        limit: limit.value,
        unit: 'degrees',
        sourceKind: limit.kind,
        source: limit.source,
        sentence: `${step.receiver} receives ${off} degrees off the line of the pass to ${step.actor}: stand to the side, not straight behind.`,
        remedy: null,
      },
    ]
  })
}

function isBall(step: TimedStep): boolean {
  return step.kind === 'pass' || step.kind === 'throw' || step.kind === 'roll'
}

/** Whole degrees between the line of one pass and the line of the next: 0 is straight on. */
function offLine(from: Point, over: Point, to: Point): number {
  return 180 - Math.round(angleDegrees(over, from, to))
}

type Lines = { readonly highest: ReadonlySet<Position>; readonly between: ReadonlySet<Position> }

/** Players this near in depth stand in one line (habit: common practice, no source). */
const LINE_DEPTH_MM = 3000

/** The outfield players who start highest, and those who start neither in the highest nor in the deepest line. */
function linesOf({ document, place }: CheckContext): Lines {
  const depths = document.positions
    .filter(({ position }) => position !== GOALKEEPER)
    .map(({ position, spot }) => ({ position, depth: millimetresOf(place(spot).x) }))
  const sorted: readonly Millimetres[] = depths.map((each) => each.depth).sort((one, other) => one - other)
  const top = sorted.at(-1) ?? 0
  const bottom = sorted[0] ?? 0
  const isHighest = (depth: number) => top - depth < LINE_DEPTH_MM
  const named = (list: typeof depths) => new Set(list.map((each) => each.position))
  return {
    highest: named(depths.filter(({ depth }) => isHighest(depth))),
    between: named(depths.filter(({ depth }) => !isHighest(depth) && depth - bottom >= LINE_DEPTH_MM)),
  }
}
