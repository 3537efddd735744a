import { coverOf, profileFor } from '@espalier/domain/check'
import { pressureOn, sayBehaviours, sayWorksAgainst } from '@espalier/domain/check/pressure'
import { nominalSpace } from '@espalier/domain/pitch'
import { expect, test } from 'vitest'
import { examplePattern } from '../../drawing/pattern.fixture'
import { answerPressure } from './answer-pressure'
import { USUAL_SETTING } from './check-setting'
import { changePattern } from './edit-pattern'
import type { PressureAnswer, PressureQuestion } from './pressure-message'
import { isToldOf, isWorking, NOTHING_TOLD, withAnswer } from './use-under-pressure'
import { whatIsChecked } from './what-is-checked'

const choices = { penaltyMarkYards7v7: 10 } as const
const document = changePattern(examplePattern, { kind: 'add-look', stepId: 's3' })
const space = nominalSpace(document.formatId)
const question: PressureQuestion = { revision: 7, document, choices, setting: USUAL_SETTING }

test('looks come first, then pressure in the words of the domain, each with its revision', () => {
  const [looks, pressure, ...more] = [...answerPressure(question)]
  expect(looks).toEqual({ revision: 7, part: 'looks', looks: coverOf(document, space, { choices }) })
  const report = pressureOn(document, space, { choices })
  expect(pressure).toMatchObject({
    revision: 7,
    part: 'pressure',
    pressure: {
      headline: sayWorksAgainst(document, report),
      behaviours: sayBehaviours(document, report).map((sentence) => ({ sentence })),
      worksAgainst: report.worksAgainst,
      isStopped: report.firstStopped !== null,
    },
  })
  expect(more).toEqual([])
})

test('is worked out for the ground and the age that are chosen on the page', () => {
  const setting = { profileId: 'U14', surface: 'heavy' } as const
  const [looks] = [...answerPressure({ ...question, setting })]
  const asked = { choices, profile: profileFor('U14'), surface: 'heavy' } as const
  expect(looks).toMatchObject({ looks: coverOf(document, space, asked) })
  expect(looks).not.toMatchObject({ looks: coverOf(document, space, { choices }) })
})

test('a check that breaks is said, and ends the answer', () => {
  const broken = { ...document, looks: [{ ...document.looks[0]!, stepId: 'nowhere' }] }
  const answers = [...answerPressure({ ...question, document: broken })]
  expect(answers.map(({ part }) => part)).toEqual(['fault'])
})

test('what the worker sends passes between threads whole', () => {
  for (const answer of answerPressure(question)) expect(structuredClone(answer)).toEqual(answer)
})

test('words that no check reads ask nothing anew, and every place does', () => {
  const retitled = changePattern(document, { kind: 'words', field: 'title', text: 'Another title' })
  expect(whatIsChecked(retitled)).toEqual(whatIsChecked(document))
  const [first] = document.positions
  const moved = changePattern(document, {
    kind: 'place',
    position: first?.position ?? '',
    spot: document.positions[1]?.spot ?? first!.spot,
  })
  expect(whatIsChecked(moved)).not.toEqual(whatIsChecked(document))
})

test('an answer of another revision changes nothing, and an older one is never taken for the new one', () => {
  const asked = { ...NOTHING_TOLD, asked: question }
  const answers: readonly PressureAnswer[] = [...answerPressure(question)]
  const told = answers.reduce(withAnswer, asked)
  expect(isWorking(asked)).toBe(true)
  expect(isWorking(told)).toBe(false)
  expect(isToldOf(told.pressure, question)).toBe(true)
  const next = { ...told, asked: { ...question, revision: 8 } }
  expect(isToldOf(next.pressure, next.asked)).toBe(false)
  expect(isWorking(next)).toBe(true)
  expect(answers.reduce(withAnswer, next)).toBe(next)
})
