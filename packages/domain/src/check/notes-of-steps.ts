import type { CheckContext } from './context'
import type { CheckNote } from './note'
import type { TimedStep } from './timed-step'

/** What a rule says of each step that is asked about, for rules that look at every step on its own. */
export function notesOfSteps(
  { timeline, isAsked }: CheckContext,
  notesOf: (step: TimedStep, index: number) => readonly CheckNote[],
): readonly CheckNote[] {
  const notes: CheckNote[] = []
  timeline.steps.forEach((step, index) => {
    if (isAsked(step.stepId)) notes.push(...notesOf(step, index))
  })
  return notes
}
