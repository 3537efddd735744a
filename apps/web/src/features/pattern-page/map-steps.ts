import type { PatternDocument, Step } from '@espalier/domain/pattern'
import { type StepList, stepsOf } from './step-path'

/** The same change for every step, of the trunk and of every answer. */
export function mapSteps(document: PatternDocument, change: (step: Step) => Step): PatternDocument {
  return {
    ...document,
    steps: document.steps.map(change),
    looks: document.looks.map((look) => ({
      ...look,
      answers: look.answers.map((answer) => ({ ...answer, steps: answer.steps.map(change) })),
    })),
  }
}

/** The document with one of its lists of steps changed. */
export function withSteps(
  document: PatternDocument,
  list: StepList,
  change: (steps: readonly Step[]) => readonly Step[],
): PatternDocument {
  if (list.kind === 'trunk') return { ...document, steps: change(document.steps) }
  const steps = change(stepsOf(document, list))
  const looks = document.looks.map((look) =>
    look.lookId === list.lookId
      ? { ...look, answers: look.answers.map((answer, at) => (at === list.answer ? { ...answer, steps } : answer)) }
      : look,
  )
  return { ...document, looks }
}
