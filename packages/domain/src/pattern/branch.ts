import type { Answer, Look, PatternDocument, Step } from './document'

/** One way through a pattern that takes an answer. */
export type Branch = {
  readonly look: Look
  readonly answer: Answer
  /** The pattern played this way: the trunk up to the look, the answer, and the trunk again from where it rejoins. */
  readonly document: PatternDocument
}

/** Every answer played as a pattern of its own, in the order of looks and answers; these have no looks themselves. */
export function listBranches(document: PatternDocument): readonly Branch[] {
  return document.looks.flatMap((look) =>
    look.answers.map((answer) => ({
      look,
      answer,
      document: { ...document, steps: stepsThrough(document, look, answer), looks: [] },
    })),
  )
}

function stepsThrough(document: PatternDocument, look: Look, answer: Answer): readonly Step[] {
  const leaves = document.steps.findIndex((step) => step.stepId === look.stepId)
  const rejoins = document.steps.findIndex((step) => step.stepId === answer.rejoins)
  return [...document.steps.slice(0, leaves), ...answer.steps, ...(rejoins < 0 ? [] : document.steps.slice(rejoins))]
}
