import { expect, test } from 'vitest'
import { pattern } from './examples/pattern'
import { patternDocument, STEPS_AND_ANSWERS_MAX } from './patterns'

const { document } = pattern
const step = (stepId: string) => ({ ...document.steps[1]!, stepId })

/** Twelve steps of the trunk, and looks whose answers have so many steps together. */
function withAnswerSteps(count: number) {
  const looks = Array.from({ length: Math.ceil(count / 12) }, (_, at) => ({
    lookId: `l${at}`,
    stepId: 's1',
    by: 'RCB',
    answers: Array.from({ length: Math.min(12, count - at * 12) / 2 }, (_, place) => ({
      sign: 'lane-shut',
      about: null,
      steps: [step(`a${at}-${place}-1`), step(`a${at}-${place}-2`)],
      rejoins: 's2',
    })),
  }))
  return { ...document, steps: Array.from({ length: 12 }, (_, at) => step(`s${at}`)), looks }
}

test('trunk and answers have at most forty steps together, and the looks are pointed at', () => {
  expect(patternDocument.safeParse(withAnswerSteps(STEPS_AND_ANSWERS_MAX - 12)).success).toBe(true)
  const refused = patternDocument.safeParse(withAnswerSteps(STEPS_AND_ANSWERS_MAX - 10))
  expect(refused.error?.issues).toMatchObject([{ path: ['looks'] }])
})
