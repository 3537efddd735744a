import { millisecondsOf, seconds } from '../quantities'
import type { CheckContext, Rule } from './context'
import type { CheckNote, Remedy } from './note'

/** Adds to each note the first of its candidates that was tried and silences it; without one the note stands alone. */
export function withRemedies(
  find: Rule,
  candidatesOf: (context: CheckContext, note: CheckNote) => readonly Remedy[],
): Rule {
  return (context) =>
    find(context)
      .filter((note) => context.isAsked(note.stepId))
      .map((note) => ({
        ...note,
        remedy: candidatesOf(context, note).find((remedy) => mends(find, context, note, remedy)) ?? null,
      }))
}

/** Played through with the remedy, the step has no such note and its ball is not waited for. */
function mends(find: Rule, context: CheckContext, note: CheckNote, remedy: Remedy): boolean {
  const after = context.mended(remedy)
  if (find(after).some((each) => each.code === note.code && each.stepId === note.stepId)) return false
  return lateMs(after, note.stepId) <= Math.max(lateMs(context, note.stepId), limitMs(context))
}

function limitMs({ limits }: CheckContext): number {
  return millisecondsOf(limits.lateSeconds.value)
}

/** How late the receiver of a step is. */
function lateMs({ timeline }: CheckContext, stepId: string | null): number {
  const step = timeline.steps.find((each) => each.stepId === stepId)
  if (step === undefined || step.receiverArrivesAt === null) return 0
  return millisecondsOf(seconds(Math.max(0, step.receiverArrivesAt - step.ballArrivesAt)))
}
