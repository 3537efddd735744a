import { describe, expect, test } from 'vitest'
import { formatOf } from '../../formats'
import type { BallAction, Obstacle, PatternDocument, Step } from '../../pattern'
import { opponentAt, passStep, samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace } from '../../pitch'
import { checkPattern, checkWith } from '../check-pattern'
import type { Rule } from '../context'
import { type CheckNote, NOTE_CODES, type NoteCode } from '../note'
import { RULES } from '../rules'

type Rules = Readonly<Record<NoteCode, Rule>>

/** One pattern that breaks one rule, and what must be said of it. */
type Case = {
  readonly title: string
  readonly code: NoteCode
  readonly document: PatternDocument
  readonly says: Partial<CheckNote>
}

function withSteps(...steps: readonly Step[]): PatternDocument {
  return { ...samplePattern, steps, looks: [] }
}

function play(stepId: string, action: BallAction, runs: Step['runs'] = []): Step {
  return { stepId, action, runs, point: '' }
}

function moved(document: PatternDocument, position: string, spot: ReturnType<typeof spotAt>): PatternDocument {
  const positions = document.positions.map((each) => (each.position === position ? { ...each, spot } : each))
  return { ...document, positions }
}

function against(document: PatternDocument, ...obstacles: readonly Obstacle[]): PatternDocument {
  return { ...document, obstacles }
}

const lofted: BallAction = {
  kind: 'pass',
  from: 'GK',
  to: 'RCB',
  into: { kind: 'feet' },
  height: 'air',
  touches: 2,
  foot: 'either',
}

const intoSpace = (from: string, to: string, spot: ReturnType<typeof spotAt>): BallAction => ({
  kind: 'pass',
  from,
  to,
  into: { kind: 'space', spot },
  height: 'ground',
  touches: 2,
  foot: 'either',
})

const wing = spotAt('halfway-right', 0, -4)
const lateRun = play('s2', intoSpace('RCB', 'RW', wing), [{ position: 'RW', to: wing, start: 'after-the-ball' }])
/** A pass up to ST in open play, with a striker beyond halfway. */
const highBall = { ...withSteps(passStep('s1', 'CM', 'ST')), restart: 'open-play' } as const
const highStriker = moved(highBall, 'ST', spotAt('far-build-out-line-centre', 2))

const cases: readonly Case[] = [
  {
    title: 'a starting place three metres over the touchline',
    code: 'off-the-space',
    document: moved(samplePattern, 'ST', spotAt('halfway-right', 0, 3)),
    says: { severity: 'to-fix', stepId: null, position: 'ST', value: 3, limit: 0, unit: 'm' },
  },
  {
    title: 'a run over the touchline',
    code: 'off-the-space',
    document: withSteps({
      ...passStep('s1', 'GK', 'RCB'),
      runs: [{ position: 'LW', to: spotAt('halfway-left', 0, -1.5), start: 'with-the-ball' }],
    }),
    says: { severity: 'to-fix', stepId: 's1', position: 'LW', value: 1.5 },
  },
  {
    title: 'two players who start in one place',
    code: 'two-in-one-place',
    document: moved(samplePattern, 'LW', spotAt('penalty-arc-top')),
    says: { severity: 'look-at', stepId: null, position: 'LW', value: 0, limit: 1, unit: 'm' },
  },
  {
    title: 'a runner who ends beside a team-mate',
    code: 'two-in-one-place',
    document: withSteps(
      {
        ...passStep('s1', 'GK', 'RCB'),
        runs: [{ position: 'CM', to: spotAt('build-out-line-right', 0, -3.5), start: 'before-the-ball' }],
      },
      passStep('s2', 'RCB', 'GK'),
      passStep('s3', 'GK', 'LCB'),
    ),
    says: { severity: 'look-at', position: 'CM', value: 0.5 },
  },
  {
    title: 'a throw no child can make',
    code: 'ball-stops-short',
    document: {
      ...withSteps(play('s1', { kind: 'throw', from: 'GK', to: 'ST', into: { kind: 'feet' } })),
      restart: 'goalkeeper-hands',
    },
    says: { severity: 'to-fix', stepId: 's1', position: 'GK', limit: 1, unit: 'm' },
  },
  {
    title: 'a run that starts when the ball is already there',
    code: 'receiver-late',
    document: withSteps(passStep('s1', 'GK', 'RCB'), lateRun),
    says: { severity: 'look-at', stepId: 's2', position: 'RW', limit: 0.3, unit: 's', sourceKind: 'computed' },
  },
  {
    title: 'a pass along the ground over half the pitch',
    code: 'pass-too-long',
    document: { ...withSteps(passStep('s1', 'RCB', 'ST')), restart: 'open-play' },
    says: { severity: 'look-at', stepId: 's1', position: 'RCB', limit: 12, unit: 'm', sourceKind: 'habit' },
  },
  {
    title: 'an opponent in the way',
    code: 'lane-closed',
    document: against(
      { ...withSteps(passStep('s1', 'RCB', 'RW')), restart: 'open-play' },
      opponentAt('x1', spotAt('build-out-line-right', -4, -6)),
    ),
    says: { severity: 'look-at', stepId: 's1', position: 'RCB', unit: 's' },
  },
  {
    title: 'a pole in the way',
    code: 'lane-closed',
    document: against(withSteps(passStep('s1', 'GK', 'CM')), {
      obstacleId: 'p1',
      kind: 'pole',
      spot: spotAt('penalty-mark', 0, 0.2),
    }),
    says: { severity: 'look-at', stepId: 's1', value: 0.2, limit: 0.5, unit: 'm' },
  },
  {
    title: 'a goal kick from outside the goal area',
    code: 'goal-kick-law',
    document: moved(samplePattern, 'GK', spotAt('goal-area-top', 1)),
    says: { severity: 'to-fix', stepId: 's1', position: 'GK', value: 1, limit: 0, unit: 'm', sourceKind: 'published' },
  },
  {
    title: 'a goal kick that is carried on',
    code: 'goal-kick-law',
    document: withSteps(play('s1', { kind: 'carry', by: 'GK', to: spotAt('penalty-mark'), at: null })),
    says: { severity: 'to-fix', position: 'GK', value: 2, limit: 1, unit: 'touches' },
  },
  {
    title: 'an opponent in the penalty area at a goal kick',
    code: 'goal-kick-law',
    document: against(samplePattern, opponentAt('x1', spotAt('penalty-mark', 0, -4))),
    says: { severity: 'to-fix', position: null, value: 1, unit: 'players', sourceKind: 'published' },
  },
  {
    title: 'an opponent who does not wait behind the build-out line',
    code: 'build-out-line-law',
    document: against(samplePattern, opponentAt('x1', spotAt('build-out-line-left', -2, 6))),
    says: { severity: 'to-fix', value: 2, limit: 0, unit: 'm', sourceKind: 'published' },
  },
  {
    title: 'a striker beyond the last opponents drawn',
    code: 'offside-law',
    document: against(highStriker, opponentAt('x1', spotAt('far-build-out-line-centre', 0, 5))),
    says: { severity: 'look-at', stepId: 's1', position: 'ST', value: 2, limit: 0, unit: 'm', sourceKind: 'published' },
  },
  {
    title: 'an outfield player who throws',
    code: 'hands-law',
    document: withSteps(
      passStep('s1', 'GK', 'RCB'),
      play('s2', { kind: 'throw', from: 'RCB', to: 'CM', into: { kind: 'feet' } }),
    ),
    says: { severity: 'to-fix', stepId: 's2', position: 'RCB', sourceKind: 'published' },
  },
  {
    title: 'a goalkeeper who picks up what a team-mate passed back',
    code: 'hands-law',
    document: withSteps(
      passStep('s1', 'GK', 'RCB'),
      passStep('s2', 'RCB', 'GK'),
      play('s3', { kind: 'roll', from: 'GK', to: 'LCB', into: { kind: 'feet' } }),
    ),
    says: { severity: 'to-fix', stepId: 's3', position: 'GK' },
  },
  {
    title: 'a lofted ball to a child who stands, where nobody may head',
    code: 'lofted-to-standing',
    document: withSteps(play('s1', lofted)),
    says: { severity: 'look-at', stepId: 's1', position: 'RCB', sourceKind: 'published' },
  },
]

function holds(rules: Rules, each: Case): boolean {
  const { notes } = checkWith(rules, each.document, nominalSpace(each.document.formatId))
  return notes.some((note) => note.code === each.code && matches(note, each.says))
}

function matches(note: CheckNote, says: Partial<CheckNote>): boolean {
  return Object.entries(says).every(([field, value]) => note[field as keyof CheckNote] === value)
}

describe('the check says', () => {
  test.each(cases)('$code of $title', (each) => {
    expect(holds(RULES, each)).toBe(true)
  })

  test('something of every code in the cases above', () => {
    expect([...new Set(cases.map((each) => each.code))].sort()).toEqual([...NOTE_CODES].sort())
  })
})

// Each rule is broken on purpose: with it replaced by one that says nothing its own cases fail, and only its own.
describe.each(NOTE_CODES)('without the rule %s', (broken) => {
  const rules: Rules = { ...RULES, [broken]: () => [] }

  test('exactly its own cases fail', () => {
    const failed = cases.filter((each) => !holds(rules, each))
    expect(failed.map((each) => each.title)).toEqual(
      cases.filter((each) => each.code === broken).map((each) => each.title),
    )
  })
})

function codesOf(document: PatternDocument): readonly NoteCode[] {
  return checkPattern(document, nominalSpace(document.formatId)).notes.map((note) => note.code)
}

describe('nothing is said of', () => {
  test.each<[string, PatternDocument, NoteCode]>([
    ['a player on the touchline', moved(samplePattern, 'ST', spotAt('halfway-right')), 'off-the-space'],
    [
      'the taker of a throw-in just outside the line',
      moved(
        { ...withSteps(passStep('s1', 'RW', 'CM')), restart: 'throw-in' },
        'RW',
        spotAt('build-out-line-right', 0, 0.8),
      ),
      'off-the-space',
    ],
    ['two players a metre apart', moved(samplePattern, 'LW', spotAt('penalty-arc-top', 1, 0)), 'two-in-one-place'],
    [
      'a receiver less than 0.3 s late',
      withSteps(
        passStep('s1', 'GK', 'RCB'),
        play('s2', intoSpace('RCB', 'RW', spotAt('build-out-line-right', 1, -3)), []),
      ),
      'receiver-late',
    ],
    [
      'a lofted ball over an opponent halfway',
      against(withSteps(play('s1', lofted)), opponentAt('x1', spotAt('goal-area-top', 0, 1.5))),
      'lane-closed',
    ],
    [
      'a goal kick by another player',
      moved(withSteps(passStep('s1', 'RCB', 'GK')), 'RCB', spotAt('goal-area-corner-right')),
      'goal-kick-law',
    ],
    [
      'an opponent on the build-out line',
      against(samplePattern, opponentAt('x1', spotAt('build-out-line-left', 0, 6))),
      'build-out-line-law',
    ],
    [
      'opponents before the build-out line at a free kick',
      against({ ...samplePattern, restart: 'free-kick' }, opponentAt('x1', spotAt('build-out-line-left', -2, 6))),
      'build-out-line-law',
    ],
    ['a high striker while no opponent is drawn', against(highStriker), 'offside-law'],
    [
      'a striker level with the last opponent',
      against(highStriker, opponentAt('x1', spotAt('far-build-out-line-centre', 2, 5))),
      'offside-law',
    ],
    [
      'a striker between halfway and the line offside is judged from',
      against(moved(highBall, 'ST', spotAt('far-build-out-line-centre', -1)), opponentAt('x1', spotAt('centre-mark'))),
      'offside-law',
    ],
    [
      'a receiver straight from a goal kick',
      against({ ...highStriker, restart: 'goal-kick' }, opponentAt('x1', spotAt('far-build-out-line-centre', 0, 5))),
      'offside-law',
    ],
    [
      'a receiver straight from a throw-in',
      against({ ...highStriker, restart: 'throw-in' }, opponentAt('x1', spotAt('far-build-out-line-centre', 0, 5))),
      'offside-law',
    ],
    [
      'a throw-in by an outfield player',
      {
        ...withSteps(play('s1', { kind: 'throw', from: 'RW', to: 'CM', into: { kind: 'feet' } })),
        restart: 'throw-in',
      },
      'hands-law',
    ],
    [
      'a goalkeeper who rolls the ball out of the hands',
      {
        ...withSteps(play('s1', { kind: 'roll', from: 'GK', to: 'RCB', into: { kind: 'feet' } })),
        restart: 'goalkeeper-hands',
      },
      'hands-law',
    ],
  ])('%s', (_, document, code) => {
    expect(codesOf(document)).not.toContain(code)
  })
})

test('a run that ends where the ball is met over the line is said once', () => {
  const over = spotAt('halfway-right', 0, 2)
  const step = play('s1', intoSpace('GK', 'RW', over), [{ position: 'RW', to: over, start: 'with-the-ball' }])
  expect(codesOf(withSteps(step)).filter((code) => code === 'off-the-space')).toHaveLength(1)
})

describe('offside', () => {
  const line = spotAt('far-build-out-line-centre', 0, 5)

  test('stops publishing only when the whole side is drawn', () => {
    const six = Array.from({ length: 6 }, (_, index) => opponentAt(`x${index}`, { ...line, rightMm: line.rightMm }))
    const severity = (document: PatternDocument) =>
      checkPattern(document, nominalSpace('us-7v7')).notes.find((note) => note.code === 'offside-law')?.severity
    expect(severity(against(highStriker, ...six.slice(0, 5)))).toBe('look-at')
    expect(severity(against(highStriker, ...six))).toBe('to-fix')
  })

  test('counts the goalkeeper as last: with seven drawn the second-last decides', () => {
    const keeper = opponentAt('x0', spotAt('far-goal-centre', -1))
    const others = Array.from({ length: 6 }, (_, index) => opponentAt(`x${index + 1}`, line))
    const notes = checkPattern(against(highStriker, keeper, ...others), nominalSpace('us-7v7')).notes
    expect(notes.find((note) => note.code === 'offside-law')).toMatchObject({ severity: 'to-fix', value: 2 })
  })

  test('is judged from the halfway line in 9v9', () => {
    const nine: PatternDocument = {
      ...highBall,
      formatId: 'us-9v9',
      formation: '3-2-3',
      ageGroup: 'U12',
      positions: [
        { position: 'CM', spot: spotAt('centre-mark', -6) },
        { position: 'ST', spot: spotAt('centre-mark', 3) },
      ],
      obstacles: [opponentAt('x1', spotAt('centre-mark', 1, 8))],
      targets: [],
    }
    expect(formatOf('us-9v9').offsideFrom.value).toBe('halfway')
    const notes = checkPattern(nine, nominalSpace('us-9v9')).notes
    expect(notes.find((note) => note.code === 'offside-law')).toMatchObject({ position: 'ST', value: 2 })
  })
})

describe('a late receiver', () => {
  const space = nominalSpace('us-7v7')

  test('is offered the latest start of the run that mends it', () => {
    const [note] = checkPattern(withSteps(passStep('s1', 'GK', 'RCB'), lateRun), space).notes
    expect(note?.remedy).toMatchObject({ kind: 'start-run', stepId: 's2', position: 'RW', start: 'with-the-ball' })
    expect(note?.sentence).toMatch(/^RW arrives \d+(\.\d)? s late\. The run starts when the ball is there\.$/u)
  })

  test('is offered the nearest place where no start mends it', () => {
    const far = spotAt('build-out-line-right', -4, -8)
    const step = play('s1', intoSpace('RCB', 'LCB', far), [{ position: 'LCB', to: far, start: 'before-the-ball' }])
    const note = checkPattern({ ...withSteps(step), restart: 'open-play' }, space).notes.find(
      (each) => each.code === 'receiver-late',
    )
    expect(note?.remedy).toMatchObject({ kind: 'meet-at', stepId: 's1', position: 'LCB' })
  })
})
