import { describe, expect, test } from 'vitest'
import { formatOf } from '../../formats'
import type { PatternDocument } from '../../pattern'
import { opponentAt, passStep, samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace } from '../../pitch'
import { checkPattern, checkWith } from '../check-pattern'
import type { Rule } from '../context'
import { type CheckNote, NOTE_CODES, type NoteCode } from '../note'
import { RULES } from '../rules'
import { lawCases } from './fixtures/law-note-cases'
import {
  against,
  type Case,
  firstCases,
  highBall,
  highStriker,
  intoSpace,
  lateRun,
  lofted,
  moved,
  play,
  withSteps,
} from './fixtures/note-cases'
import { playCases } from './fixtures/play-note-cases'

const cases: readonly Case[] = [...firstCases, ...lawCases, ...playCases]

type Rules = Readonly<Record<NoteCode, Rule>>

function holds(rules: Rules, each: Case): boolean {
  const { notes } = checkWith(rules, each.document, nominalSpace(each.document.formatId), each.options)
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
      'a lofted ball over a pole',
      against(withSteps(play('s1', lofted)), { obstacleId: 'p1', kind: 'pole', spot: spotAt('goal-centre', 7, 4) }),
      'lane-closed',
    ],
    [
      'a throw that ends half a metre short',
      moved(
        {
          ...withSteps(play('s1', { kind: 'throw', from: 'GK', to: 'RCB', into: { kind: 'feet' } })),
          restart: 'goalkeeper-hands',
        },
        'RCB',
        spotAt('goal-centre', 11.7),
      ),
      'ball-stops-short',
    ],
    [
      'a pole in the penalty area at a goal kick',
      against(samplePattern, { obstacleId: 'p1', kind: 'pole', spot: spotAt('penalty-mark', 0, -4) }),
      'goal-kick-law',
    ],
    [
      'a ball played back by someone further up',
      against(
        moved(highStriker, 'CM', spotAt('far-build-out-line-centre', 5, 3)),
        opponentAt('x1', spotAt('far-build-out-line-centre', 0, 5)),
      ),
      'offside-law',
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
