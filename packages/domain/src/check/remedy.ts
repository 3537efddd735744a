import type { PatternDocument, Step } from '../pattern'
import { placeOf } from '../pattern'
import { unreachable } from '../quantities'
import type { Remedy } from './note'

/** The document with a remedy applied: what a page does when its button is pressed, and what the check tried before. */
export function applyRemedy(document: PatternDocument, remedy: Remedy): PatternDocument {
  const mend = (steps: readonly Step[]) =>
    steps.map((step) => (step.stepId === remedy.stepId ? mendStep(step, remedy) : step))
  const looks = document.looks.map((look) => ({
    ...look,
    answers: look.answers.map((answer) => ({ ...answer, steps: mend(answer.steps) })),
  }))
  return { ...document, steps: mend(document.steps), looks }
}

/** One step with a remedy applied. */
export function mendStep(step: Step, remedy: Remedy): Step {
  switch (remedy.kind) {
    case 'start-run':
      return {
        ...step,
        runs: step.runs.map((run) => (run.position === remedy.position ? { ...run, start: remedy.start } : run)),
      }
    case 'meet-at': {
      const runs = step.runs.map((run) => (run.position === remedy.position ? { ...run, to: remedy.spot } : run))
      const { action } = step
      if (action.kind === 'carry' || action.kind === 'dribble-past') {
        return { ...step, runs, action: { ...action, to: remedy.spot } }
      }
      if (!('into' in action) || placeOf(action) === null) return { ...step, runs }
      return { ...step, runs, action: { ...action, into: { kind: 'space', spot: remedy.spot } } }
    }
    case 'come-to': {
      const { position, spot, start } = remedy
      const others = step.runs.filter((run) => run.position !== position)
      return { ...step, runs: [...others, { position, to: spot, start }] }
    }
    case 'drop-run':
      return { ...step, runs: step.runs.filter((run) => run.position !== remedy.position) }
    default:
      return unreachable(remedy)
  }
}
