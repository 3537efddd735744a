import type { Answer, Look, PatternDocument } from './document'
import type { DocumentFault } from './faults'

/** An answer is short, or nobody remembers it (habit: common practice, no source). */
export const ANSWER_STEPS_MAX = 3

/** A look hangs on a step of the trunk, each answer leads on or out, and the last is the exit when all is shut. */
export function lookFaults(document: PatternDocument): readonly DocumentFault[] {
  const placed = new Set(document.positions.map((each) => each.position))
  return document.looks.flatMap((look, lookIndex) => {
    const pointer = `/looks/${lookIndex}`
    const at = document.steps.findIndex((step) => step.stepId === look.stepId)
    const faults: DocumentFault[] = []
    if (at < 0) {
      faults.push({
        code: 'look-step-unknown',
        pointer: `${pointer}/stepId`,
        detail: `there is no step ${look.stepId}`,
      })
    }
    if (!placed.has(look.by)) {
      faults.push({ code: 'position-unknown', pointer: `${pointer}/by`, detail: `${look.by} has no starting place` })
    }
    if (!endsAtExit(look)) {
      faults.push({
        code: 'look-without-exit',
        pointer: `${pointer}/answers`,
        detail: 'the last answer must be for when all is shut, and lead to the exit',
      })
    }
    const answers = look.answers.flatMap((answer, index) =>
      answerFaults(document, answer, `${pointer}/answers/${index}`, at, placed),
    )
    return [...faults, ...answers]
  })
}

function endsAtExit(look: Look): boolean {
  const last = look.answers.at(-1)
  return last !== undefined && last.sign === 'all-shut' && last.rejoins === 'exit'
}

function answerFaults(
  document: PatternDocument,
  answer: Answer,
  pointer: string,
  lookAt: number,
  placed: ReadonlySet<string>,
): readonly DocumentFault[] {
  const faults: DocumentFault[] = []
  if (answer.steps.length < 1 || answer.steps.length > ANSWER_STEPS_MAX) {
    faults.push({
      code: 'answer-length',
      pointer: `${pointer}/steps`,
      detail: `an answer has one to ${ANSWER_STEPS_MAX} steps, this has ${answer.steps.length}`,
    })
  }
  if (answer.about !== null && !placed.has(answer.about)) {
    faults.push({
      code: 'position-unknown',
      pointer: `${pointer}/about`,
      detail: `${answer.about} has no starting place`,
    })
  }
  if (answer.rejoins !== 'exit') {
    const back = document.steps.findIndex((step) => step.stepId === answer.rejoins)
    // Rejoining at or before the look would play the same steps for ever.
    if (back < 0 || (lookAt >= 0 && back <= lookAt)) {
      faults.push({
        code: 'rejoin-unknown',
        pointer: `${pointer}/rejoins`,
        detail: `there is no later step ${answer.rejoins} to rejoin`,
      })
    }
  }
  return faults
}
