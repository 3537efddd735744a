import type { CheckContext } from './context'
import type { CheckNote } from './note'
import type { TimedStep } from './timed-step'

const NONE: readonly CheckNote[] = []

/** What a rule says of each step that is asked about, for rules that look at every step on its own. */
export function notesOfSteps(
  { timeline, isAsked }: CheckContext,
  notesOf: (step: TimedStep, index: number) => readonly CheckNote[],
): readonly CheckNote[] {
  return timeline.steps.flatMap((step, index) => (isAsked(step.stepId) ? notesOf(step, index) : NONE))
}
