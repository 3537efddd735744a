import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mirrorPattern, mirrorPosition, type PatternDocument, type Step } from '../pattern'
import { patternArbitrary, spotArbitrary } from '../pattern/fixtures/arbitrary-pattern'
import { opponentAt, passStep, samplePattern, spotAt } from '../pattern/fixtures/sample-pattern'
import { nominalSpace, type Space } from '../pitch'
import { millimetres } from '../quantities'
import { checkPattern } from './check-pattern'
import { EVERYTHING, widePatternArbitrary } from './fixtures/wide-pattern'
import { type CheckNote, TO_FIX_CODES } from './note'
import { applyRemedy } from './remedy'

const space = nominalSpace('us-7v7')

/** A whole check is played again for every remedy: fewer cases than usual, drawn anew on every run of the tests. */
const RUNS = { numRuns: 50 }

/** What a note says apart from its words, which name the players. */
function gist(note: CheckNote) {
  const { code, severity, stepId, position, value, limit, unit } = note
  return { code, severity, stepId, position, value, limit, unit, remedy: note.remedy?.kind ?? null }
}

describe('a check of any pattern', { timeout: 60_000 }, () => {
  test('says the same of the mirrored pattern, of the mirrored players', () => {
    fc.assert(
      fc.property(widePatternArbitrary, (document) => {
        const notes = checkPattern(document, space, EVERYTHING).notes.map(gist)
        const mirrored = checkPattern(mirrorPattern(document), space, EVERYTHING).notes.map(gist)
        const back = mirrored.map((note) => ({
          ...note,
          position: note.position === null ? null : mirrorPosition(note.position),
        }))
        expect(back).toEqual(notes)
      }),
      RUNS,
    )
  })

  test('does not depend on what the positions are called', () => {
    fc.assert(
      fc.property(widePatternArbitrary, (document) => {
        const renamed = rename(document, (name) => (name === 'GK' ? name : `Q${name}`))
        const notes = checkPattern(document, space, EVERYTHING).notes.map(gist)
        const others = checkPattern(renamed, space, EVERYTHING).notes.map(gist)
        expect(others.map((note) => ({ ...note, position: note.position?.replace(/^Q/u, '') ?? null }))).toEqual(notes)
      }),
      RUNS,
    )
  })

  test('asked for what is to fix, says the same to-fix notes as the whole check, in the same order', () => {
    fc.assert(
      fc.property(widePatternArbitrary, (document) => {
        const whole = checkPattern(document, space).notes.filter(({ severity }) => severity === 'to-fix')
        expect(checkPattern(document, space, { severity: 'to-fix' }).notes).toEqual(whole)
      }),
      RUNS,
    )
  })

  test('never opens a lane by adding an opponent', () => {
    fc.assert(
      fc.property(patternArbitrary, spotArbitrary, (document, spot) => {
        const more = { ...document, obstacles: [...document.obstacles, opponentAt('x9', spot)] }
        const lanes = (checked: PatternDocument) =>
          checkPattern(checked, space)
            .notes.filter((note) => note.code === 'lane-closed')
            .map(gist)
        const withMore = lanes(more)
        for (const note of lanes(document)) expect(withMore).toContainEqual(note)
      }),
      RUNS,
    )
  })

  test('is finite, names a limit and its source, and reads as a sentence', () => {
    fc.assert(
      fc.property(widePatternArbitrary, (document) => {
        for (const note of checkPattern(document, space, EVERYTHING).notes) {
          expect(Number.isFinite(note.value) && Number.isFinite(note.limit)).toBe(true)
          expect(note.source.length).toBeGreaterThan(10)
          expect(note.sentence).toMatch(/^[A-Z].*\.$/u)
          expect(note.sentence).not.toMatch(/undefined|null|NaN/u)
        }
      }),
      RUNS,
    )
  })

  test('names only remedies that mend: applied, the same step has no such note', () => {
    let mended = 0
    fc.assert(
      fc.property(widePatternArbitrary, (document) => {
        for (const note of checkPattern(document, space, EVERYTHING).notes) {
          if (note.remedy === null) continue
          mended += 1
          const after = checkPattern(applyRemedy(document, note.remedy), space, EVERYTHING).notes
          expect(after.filter((each) => each.code === note.code && each.stepId === note.stepId)).toEqual([])
        }
      }),
      RUNS,
    )
    expect(mended).toBeGreaterThan(10)
  })

  test('stops publishing only for law and what cannot be, never for what is merely late, tight, long or close', () => {
    const sometimes = ['offside-law', 'free-kick-law', 'throw-in-law']
    const hard: readonly string[] = TO_FIX_CODES.filter((code) => !sometimes.includes(code))
    fc.assert(
      fc.property(widePatternArbitrary, (document) => {
        for (const note of checkPattern(document, space, EVERYTHING).notes) {
          if (hard.includes(note.code)) expect(note.severity).toBe('to-fix')
          else if (!sometimes.includes(note.code)) expect(note.severity).not.toBe('to-fix')
        }
      }),
      RUNS,
    )
  })
})

test('notes come in the order of the script, answers before the step they may replace', () => {
  const document: PatternDocument = {
    ...samplePattern,
    obstacles: [opponentAt('x2', samplePattern.positions[5]!.spot), opponentAt('x1', samplePattern.positions[2]!.spot)],
  }
  const order = checkPattern(document, space).notes.map((note) => note.stepId)
  // The answers of a look stand before the step they may replace.
  const rank = (stepId: string | null) => ['s1', 'a1', 'a2', 'a3', 's2', 's3'].indexOf(stepId ?? '')
  expect(order.map(rank)).toEqual([...order.map(rank)].sort((a, b) => a - b))
  expect(new Set(order).size).toBeGreaterThan(1)
})

describe('an answer of a look', () => {
  const [look] = samplePattern.looks
  const answered = (...steps: readonly Step[]): PatternDocument => ({
    ...samplePattern,
    looks: [{ ...look!, answers: [{ ...look!.answers[0]!, steps, rejoins: 'exit' }, look!.answers[1]!] }],
  })
  const wide = spotAt('halfway-left', 0, 3)
  const lateRun: Step = {
    ...passStep('a1', 'RCB', 'LW'),
    action: {
      kind: 'pass',
      from: 'RCB',
      to: 'LW',
      into: { kind: 'space', spot: wide },
      height: 'ground',
      touches: 2,
      foot: 'either',
    },
    runs: [{ position: 'LW', to: wide, start: 'after-the-ball' }],
  }

  test('is checked where the trunk has come to, and named by its own step', () => {
    const notes = checkPattern(answered(passStep('a1', 'RCB', 'ST')), space).notes
    expect(notes.map((note) => [note.code, note.stepId])).toEqual([['pass-too-long', 'a1']])
  })

  test('is held to the law like the trunk: its notes to fix stop publishing', () => {
    const rolled: Step = {
      stepId: 'a1',
      action: { kind: 'roll', from: 'RCB', to: 'CM', into: { kind: 'feet' } },
      runs: [],
      point: '',
    }
    const [note] = checkPattern(answered(rolled), space).notes
    expect(note).toMatchObject({ code: 'hands-law', severity: 'to-fix', stepId: 'a1' })
  })

  test('is mended by its own remedy', () => {
    const document = answered(lateRun)
    const late = (checked: PatternDocument) =>
      checkPattern(checked, space).notes.find((note) => note.code === 'receiver-late')
    const remedy = late(document)?.remedy
    expect(remedy).toMatchObject({ stepId: 'a1', position: 'LW' })
    expect(late(applyRemedy(document, remedy!))).toBeUndefined()
  })

  test('says nothing twice of the trunk it shares', () => {
    const offSpace = {
      ...samplePattern,
      positions: samplePattern.positions.map((each) =>
        each.position === 'ST' ? { ...each, spot: spotAt('halfway-right', 0, 3) } : each,
      ),
    }
    expect(checkPattern(offSpace, space).notes.map((note) => note.code)).toEqual(['off-the-space'])
  })
})

test('near the ball a longer pitch changes nothing', () => {
  const longer: Space = { ...space, lengthMm: millimetres(space.lengthMm + 4000) }
  const [one] = checkPattern(samplePattern, space).timeline.steps
  const [other] = checkPattern(samplePattern, longer).timeline.steps
  expect(other).toEqual(one)
})

test('the sample pattern has nothing to say', () => {
  expect(checkPattern(samplePattern, space).notes).toEqual([])
})

test('a check on a half pitch wider than long is the same check on other ground: what does not fit there is named', () => {
  const half: Space = {
    ...space,
    covers: 'half',
    lengthMm: millimetres(20_000),
    widthMm: millimetres(36_000),
  }
  const notes = checkPattern(samplePattern, half).notes
  expect(notes.every((note) => note.code === 'off-the-space')).toBe(true)
  expect(notes.map((note) => note.position)).toContain('ST')
})

function rename(document: PatternDocument, to: (name: string) => string): PatternDocument {
  const names = new Set(document.positions.map((each) => each.position))
  // Every string that is a position is one: the document is small and its own words never are.
  const swap = (value: unknown): unknown => {
    if (typeof value === 'string') return names.has(value) ? to(value) : value
    if (Array.isArray(value)) return value.map(swap)
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, swap(each)]))
  }
  return swap(document) as PatternDocument
}
