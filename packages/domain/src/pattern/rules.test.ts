import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { PatternDocument, Step } from './document'
import { DOCUMENT_FAULT_CODES, type DocumentFaultCode } from './faults'
import { patternArbitrary } from './fixtures/arbitrary-pattern'
import { passStep, samplePattern, spotAt } from './fixtures/sample-pattern'
import { checkShape } from './rules'

const look = samplePattern.looks[0]!

function withSteps(...steps: readonly Step[]): PatternDocument {
  return { ...samplePattern, steps, looks: [] }
}

function withAnswer(change: object): PatternDocument {
  return { ...samplePattern, looks: [{ ...look, answers: [{ ...look.answers[0]!, ...change }, look.answers[1]!] }] }
}

/** One broken document for every way a document can be refused. */
const cases: readonly (readonly [DocumentFaultCode, string, PatternDocument])[] = [
  ['formation-count', '/formation', { ...samplePattern, formation: '2-3-2' }],
  ['formation-count', '/formation', { ...samplePattern, formation: '2–3–1' }],
  [
    'formation-count',
    '/positions',
    { ...samplePattern, positions: [...samplePattern.positions, { position: 'LB', spot: spotAt('corner-left') }] },
  ],
  [
    'position-twice',
    '/positions/6/position',
    {
      ...samplePattern,
      positions: [...samplePattern.positions.slice(0, 6), { position: 'LW', spot: spotAt('centre-mark') }],
    },
  ],
  [
    'position-twice',
    '/onLoss/1/position',
    { ...samplePattern, onLoss: [samplePattern.positions[0]!, samplePattern.positions[0]!] },
  ],
  [
    'position-unknown',
    '/inPossession/0/position',
    { ...samplePattern, inPossession: [{ position: 'LB', spot: spotAt('centre-mark') }] },
  ],
  ['position-unknown', '/steps/0/action/from', withSteps(passStep('s1', 'LB', 'GK'))],
  [
    'position-unknown',
    '/steps/0/runs/0/position',
    withSteps({
      ...passStep('s1', 'GK', 'RCB'),
      runs: [{ position: 'LB', to: spotAt('centre-mark'), start: 'with-the-ball' }],
    }),
  ],
  ['id-twice', '/steps/1/stepId', withSteps(passStep('s1', 'GK', 'RCB'), passStep('s1', 'RCB', 'RW'))],
  ['id-twice', '/looks/0/answers/0/steps/0/stepId', withAnswer({ steps: [passStep('s1', 'RCB', 'RW')] })],
  [
    'id-twice',
    '/targets/1/targetId',
    { ...samplePattern, targets: [samplePattern.targets[0]!, samplePattern.targets[0]!] },
  ],
  [
    'id-twice',
    '/obstacles/1/obstacleId',
    { ...samplePattern, obstacles: [samplePattern.obstacles[0]!, samplePattern.obstacles[0]!] },
  ],
  ['passer-without-ball', '/steps/1/action/from', withSteps(passStep('s1', 'GK', 'RCB'), passStep('s2', 'CM', 'RW'))],
  [
    'passer-without-ball',
    '/steps/0/action/from',
    { ...withSteps(passStep('s1', 'RCB', 'RW')), restart: 'goalkeeper-hands' },
  ],
  [
    'passer-without-ball',
    '/steps/1/action/from',
    withSteps(
      { stepId: 's1', action: { kind: 'shot', by: 'GK', target: 't1' }, runs: [], point: '' },
      passStep('s2', 'GK', 'RW'),
    ),
  ],
  ['passer-without-ball', '/looks/0/by', { ...samplePattern, looks: [{ ...look, by: 'CM' }] }],
  ['nobody-receives', '/steps/0/action/to', withSteps(passStep('s1', 'GK', 'GK'))],
  ['nobody-receives', '/steps/0/action/to', withSteps(passStep('s1', 'GK', 'LB'))],
  [
    'nobody-receives',
    '/steps/0/action/target',
    withSteps({ stepId: 's1', action: { kind: 'shot', by: 'GK', target: 't9' }, runs: [], point: '' }),
  ],
  [
    'obstacle-unknown',
    '/steps/0/action/past',
    withSteps({
      stepId: 's1',
      action: { kind: 'dribble-past', by: 'GK', to: spotAt('centre-mark'), past: 'p9' },
      runs: [],
      point: '',
    }),
  ],
  [
    'obstacle-unknown',
    '/steps/0/action/at',
    withSteps({
      stepId: 's1',
      action: { kind: 'carry', by: 'GK', to: spotAt('centre-mark'), at: 'p9' },
      runs: [],
      point: '',
    }),
  ],
  [
    'run-twice',
    '/steps/0/runs/1/position',
    withSteps({
      ...passStep('s1', 'GK', 'RCB'),
      runs: [
        { position: 'CM', to: spotAt('centre-mark'), start: 'with-the-ball' },
        { position: 'CM', to: spotAt('penalty-mark'), start: 'after-the-ball' },
      ],
    }),
  ],
  [
    'point-too-long',
    '/steps/0/point',
    withSteps({ ...passStep('s1', 'GK', 'RCB'), point: 'one two three four five six seven' }),
  ],
  [
    'landmark-unknown',
    '/steps/0/runs/0/to/landmark',
    {
      ...withSteps({
        ...passStep('s1', 'GK', 'RCB'),
        runs: [{ position: 'RW', to: spotAt('build-out-line-right'), start: 'with-the-ball' }],
      }),
      formatId: 'us-9v9',
      formation: '3-2-3',
      positions: ['GK', 'RCB', 'RW'].map((position) => ({ position, spot: spotAt('centre-mark') })),
    },
  ],
  ['look-step-unknown', '/looks/0/stepId', { ...samplePattern, looks: [{ ...look, stepId: 's9' }] }],
  ['look-without-exit', '/looks/0/answers', { ...samplePattern, looks: [{ ...look, answers: [] }] }],
  [
    'look-without-exit',
    '/looks/0/answers',
    { ...samplePattern, looks: [{ ...look, answers: look.answers.slice(0, 1) }] },
  ],
  ['answer-length', '/looks/0/answers/0/steps', withAnswer({ steps: [] })],
  ['rejoin-unknown', '/looks/0/answers/0/rejoins', withAnswer({ rejoins: 's9' })],
  ['rejoin-unknown', '/looks/0/answers/0/rejoins', withAnswer({ rejoins: 's1' })],
  ['rejoin-without-ball', '/looks/0/answers/0/rejoins', withAnswer({ steps: [passStep('a1', 'RCB', 'CM')] })],
]

describe('a document is refused', () => {
  test.each(cases)('for %s at %s', (code, pointer, document) => {
    expect(checkShape(document).map((fault) => [fault.code, fault.pointer])).toContainEqual([code, pointer])
  })

  test('for every code at least once in the cases above', () => {
    expect([...new Set(cases.map(([code]) => code))].sort()).toEqual([...DOCUMENT_FAULT_CODES].sort())
  })

  test('once for one mistake: the walk goes on as if the passer had the ball', () => {
    const steps = [passStep('s1', 'GK', 'RCB'), passStep('s2', 'CM', 'RW'), passStep('s3', 'RW', 'ST')]
    expect(checkShape(withSteps(...steps))).toHaveLength(1)
  })
})

describe('a document is not refused', () => {
  test('when it is whole', () => {
    expect(checkShape(samplePattern)).toEqual([])
  })

  test('while it is still being written: no steps, no looks, few positions', () => {
    const positions = samplePattern.positions.slice(0, 1)
    expect(checkShape({ ...samplePattern, positions, steps: [], looks: [], title: '' })).toEqual([])
  })

  test('for a point of exactly six words, however they are spaced', () => {
    expect(checkShape(withSteps({ ...passStep('s1', 'GK', 'RCB'), point: '  one two  three four five six ' }))).toEqual(
      [],
    )
  })

  test('for any places, runs and opponents as long as possession is followed', () => {
    fc.assert(
      fc.property(patternArbitrary, (document) => {
        expect(checkShape(document)).toEqual([])
      }),
    )
  })
})
