import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { PatternDocument, Step } from './document'
import { patternArbitrary } from './fixtures/arbitrary-pattern'
import { passStep, samplePattern, spotAt } from './fixtures/sample-pattern'
import { sayPlace, scriptLooks, scriptSentences } from './script'
import { ENGLISH } from './script-words'

function sentenceOf(step: Step): string | undefined {
  return scriptSentences({ ...samplePattern, steps: [step], looks: [] })[0]?.text
}

describe('a step reads as a coach would say it', () => {
  test('a pass to feet in two touches', () => {
    expect(sentenceOf(passStep('s1', 'GK', 'RCB'))).toBe('GK passes to RCB, to feet, two touches.')
  })

  test('a run as another plays', () => {
    const step: Step = {
      ...passStep('s1', 'CM', 'ST'),
      runs: [{ position: 'RW', to: spotAt('halfway-right'), start: 'with-the-ball' }],
    }
    expect(sentenceOf(step)).toBe('CM passes to ST, to feet, two touches. RW runs as CM plays.')
  })

  test('a set-back into space names its place only in full', () => {
    const step: Step = {
      stepId: 's1',
      action: {
        kind: 'set-back',
        from: 'ST',
        to: 'RW',
        into: { kind: 'space', spot: spotAt('centre-mark', 4, 0) },
        foot: 'near',
      },
      runs: [],
      point: '',
    }
    const [script] = scriptSentences({ ...samplePattern, steps: [step], looks: [] })
    expect(script?.text).toBe('ST sets it for RW, into space, one touch, near foot.')
    expect(script?.fullText).toBe(
      'ST sets it for RW, into space, 4 m in front of the centre mark, one touch, near foot.',
    )
  })

  const at = { runs: [], point: '' }
  const place = spotAt('centre-mark', -2, 0)
  test.each<[string, Step]>([
    [
      'RCB carries it at the pole to 2 m short of the centre mark.',
      { ...at, stepId: 's', action: { kind: 'carry', by: 'RCB', to: place, at: 'p1' } },
    ],
    [
      'RCB carries it to 2 m short of the centre mark.',
      { ...at, stepId: 's', action: { kind: 'carry', by: 'RCB', to: place, at: null } },
    ],
    [
      'CM dribbles past the pole to 2 m short of the centre mark.',
      { ...at, stepId: 's', action: { kind: 'dribble-past', by: 'CM', to: place, past: 'p1' } },
    ],
    [
      'GK rolls it to LCB, to feet.',
      { ...at, stepId: 's', action: { kind: 'roll', from: 'GK', to: 'LCB', into: { kind: 'feet' } } },
    ],
    [
      'GK throws to LW, to feet.',
      { ...at, stepId: 's', action: { kind: 'throw', from: 'GK', to: 'LW', into: { kind: 'feet' } } },
    ],
    ['CM lets it run to ST.', { ...at, stepId: 's', action: { kind: 'dummy', by: 'CM', to: 'ST' } }],
    ['ST plays it through the gate.', { ...at, stepId: 's', action: { kind: 'shot', by: 'ST', target: 't1' } }],
    [
      'GK passes in the air to ST, to feet, one touch, far foot.',
      {
        ...at,
        stepId: 's',
        action: { kind: 'pass', from: 'GK', to: 'ST', into: { kind: 'feet' }, height: 'air', touches: 1, foot: 'far' },
      },
    ],
  ])('%s', (sentence, step) => {
    expect(sentenceOf(step)).toBe(sentence)
  })
})

describe('a place reads from its landmark', () => {
  test.each([
    [spotAt('penalty-arc-top'), 'the top of the arc'],
    [spotAt('penalty-arc-top', 0.4, -0.4), 'the top of the arc'],
    [spotAt('centre-mark', 3, -2), '3 m in front and 2 m left of the centre mark'],
    [spotAt('build-out-line-right', 0, -3), '3 m left of the build-out line on the right'],
  ])('%j', (spot, words) => {
    expect(sayPlace(spot)).toBe(words)
  })
})

test('looks read with their answers in order, lettered, each ending in what comes after', () => {
  const [look] = scriptLooks(samplePattern)
  expect(look?.sentence.text).toBe('Before this, RCB looks.')
  expect(look?.answers.map((answer) => [answer.letter, answer.sign.text, answer.onward.text])).toEqual([
    ['A', 'If the way to RW is shut:', 'Then on with step 3.'],
    ['B', 'If everything short is shut:', 'That is the way out.'],
  ])
  expect(look?.answers[0]?.steps.map((step) => step.text)).toEqual([
    'RCB passes to CM, to feet, two touches. RW runs as RCB plays.',
    'CM passes to RW, to feet, two touches.',
  ])
})

test('another language needs another table only, in its own order of words', () => {
  const words = { ...ENGLISH, actions: { ...ENGLISH.actions, pass: '{touches}: {receiver} of {actor}' } }
  expect(scriptSentences(samplePattern, words)[0]?.text).toBe('two touches: RCB of GK')
})

test('every part that is not plain words points at what it shows', () => {
  fc.assert(
    fc.property(patternArbitrary, (document) => {
      for (const step of scriptSentences(document)) {
        for (const part of step.sentences.flatMap((sentence) => sentence.parts)) {
          if (part.kind === 'words') expect(part.pointer).toBeNull()
          else if (part.pointer !== null) expect(valueAt(document, part.pointer)).toBeDefined()
        }
        expect(step.fullText).not.toMatch(/[{}[\]<>]|undefined/u)
      }
    }),
  )
})

function valueAt(document: PatternDocument, pointer: string): unknown {
  return pointer
    .slice(1)
    .split('/')
    .reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], document)
}
