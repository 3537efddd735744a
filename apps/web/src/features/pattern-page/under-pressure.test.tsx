import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { lookedPattern as oneLook } from '../../drawing/looked-pattern.fixture'
import { answerPressure } from './answer-pressure'
import { USUAL_SETTING } from './check-setting'
import { changePattern } from './edit-pattern'
import { readPattern, withSignNotes } from './pattern-reading'
import type { PressureQuestion } from './pressure-message'
import { UnderPressureSection } from './under-pressure'
import { NOTHING_TOLD, type UnderPressure, withAnswer } from './use-under-pressure'

const choices = { penaltyMarkYards7v7: 10 } as const
const twoLooks = changePattern(oneLook, { kind: 'add-look', stepId: 's4' })

function toldOf(document: typeof oneLook): UnderPressure {
  const question: PressureQuestion = { revision: 1, document, choices, setting: USUAL_SETTING }
  return [...answerPressure(question)].reduce(withAnswer, { ...NOTHING_TOLD, asked: question })
}

function markup(under: UnderPressure, document = oneLook, reader: 'director' | 'coach' = 'director'): string {
  const reading = readPattern(document, choices)
  return renderToStaticMarkup(<UnderPressureSection {...{ under, reading, choices, reader }} />)
}

const unescaped = (html: string) => html.replaceAll('&#x27;', "'")

test('headline, one line a behaviour, what mends it, and one sentence for each number of X stand on the page', () => {
  const under = toldOf(oneLook)
  const html = unescaped(markup(under))
  const words = under.pressure!.value
  expect(html).toContain(words.headline)
  for (const { sentence, mends } of words.behaviours) {
    for (const each of [sentence, ...mends]) expect(html).toContain(each)
  }
  for (const mend of words.mends) expect(html).toContain(mend)
  for (const { counts } of under.looks!.value) for (const { sentence } of counts) expect(html).toContain(sentence)
  expect(html).toContain('not a forecast')
})

test('a coach is told no percentage', () => {
  const under = toldOf(oneLook)
  expect(markup(under)).toContain(' % of the places')
  expect(markup(under, oneLook, 'coach')).not.toContain('%')
})

test('before the first answer the page says that it works, in a place that is announced', () => {
  const waiting = { ...toldOf(oneLook), looks: null, pressure: null }
  expect(markup(waiting)).toMatch(/<p role="status"[^>]*>Working it out …<\/p>/)
})

test('an older answer stays in its place and says that it is one', () => {
  const under = toldOf(oneLook)
  expect(markup(under)).not.toContain('of the pattern before your last change')
  const older = { ...under, asked: { ...under.asked!, revision: 2 } }
  expect(markup(older).match(/of the pattern before your last change/g)).toHaveLength(2)
  expect(markup(older)).toContain('Working it out …')
  expect(markup({ ...under, asked: null })).toContain('It is worked out again once the pattern can be played.')
})

test('where the worker fails the page says that the notes hold', () => {
  expect(markup({ ...toldOf(oneLook), pressure: null, fault: 'no worker' })).toContain('The notes at the steps hold')
})

test('with several looks a list chooses which one is drawn; with one there is nothing to choose', () => {
  expect(markup(toldOf(oneLook))).not.toContain('<select')
  const html = markup(toldOf(twoLooks), twoLooks)
  expect(html).toMatch(/<select aria-label="The look that is drawn"/)
  expect(html.match(/<option/g)).toHaveLength(2)
})

test('the map has a letter for each answer that is best somewhere, a legend and its words', () => {
  const html = markup(toldOf(oneLook))
  expect(html).toContain('answer A is best')
  expect(html).toContain('hole: nothing is open')
  expect(html).toContain('X near the own goal, on the left: ')
  // In the drawings for desk, phone and paper, and in each one's legend.
  expect((html.match(/class="drawing-place"[^>]*>A<\/text>/g) ?? []).length).toBeGreaterThan(6)
})

test('a sign that shows too short comes as a note at its step, after the letters that stand already', () => {
  const reading = readPattern(oneLook, choices)
  const stepId = oneLook.looks[0]!.answers[0]!.steps[0]!.stepId
  const signed = withSignNotes(reading, [
    {
      code: 'sign-too-short',
      severity: 'note',
      stepId,
      position: 'RCB',
      value: 0.4,
      limit: 1,
      unit: 's',
      sourceKind: 'habit',
      source: 'common practice, no source',
      sentence: 'RCB sees the sign for answer A only 0.4 s before playing.',
    },
  ])
  expect(signed.notes.slice(0, -1)).toEqual(reading.notes)
  expect(signed.notes.at(-1)).toMatchObject({
    stepId,
    letter: 'abcdefghijklmnopqrstuvwxyz'[reading.notes.length],
    measured: '0.4 s, limit 1 s',
    remedy: null,
  })
})
