import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mirrorPattern, mirrorPosition, type PatternDocument } from '../pattern'
import { patternArbitrary, spotArbitrary } from '../pattern/fixtures/arbitrary-pattern'
import { opponentAt, samplePattern } from '../pattern/fixtures/sample-pattern'
import { nominalSpace, type Space } from '../pitch'
import { millimetres } from '../quantities'
import { checkPattern } from './check-pattern'
import type { CheckNote } from './note'
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
      fc.property(patternArbitrary, (document) => {
        const notes = checkPattern(document, space).notes.map(gist)
        const mirrored = checkPattern(mirrorPattern(document), space).notes.map(gist)
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
      fc.property(patternArbitrary, (document) => {
        const renamed = rename(document, (name) => (name === 'GK' ? name : `Q${name}`))
        const notes = checkPattern(document, space).notes.map(gist)
        const others = checkPattern(renamed, space).notes.map(gist)
        expect(others.map((note) => ({ ...note, position: note.position?.replace(/^Q/u, '') ?? null }))).toEqual(notes)
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
      fc.property(patternArbitrary, (document) => {
        for (const note of checkPattern(document, space).notes) {
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
      fc.property(patternArbitrary, (document) => {
        for (const note of checkPattern(document, space).notes) {
          if (note.remedy === null) continue
          mended += 1
          const after = checkPattern(applyRemedy(document, note.remedy), space).notes
          expect(after.filter((each) => each.code === note.code && each.stepId === note.stepId)).toEqual([])
        }
      }),
      RUNS,
    )
    expect(mended).toBeGreaterThan(10)
  })

  test('stops publishing only for law and what cannot be, never for what is merely late, tight, long or close', () => {
    const soft = ['receiver-late', 'lane-closed', 'pass-too-long', 'two-in-one-place', 'lofted-to-standing']
    fc.assert(
      fc.property(patternArbitrary, (document) => {
        for (const note of checkPattern(document, space).notes) {
          if (soft.includes(note.code)) expect(note.severity).not.toBe('to-fix')
          else if (note.code !== 'offside-law') expect(note.severity).toBe('to-fix')
        }
      }),
      RUNS,
    )
  })
})

test('notes come in the order of the script', () => {
  const document: PatternDocument = {
    ...samplePattern,
    obstacles: [opponentAt('x2', samplePattern.positions[5]!.spot), opponentAt('x1', samplePattern.positions[2]!.spot)],
  }
  const order = checkPattern(document, space).notes.map((note) => note.stepId)
  const rank = (stepId: string | null) => samplePattern.steps.findIndex((step) => step.stepId === stepId)
  expect(order.map(rank)).toEqual([...order.map(rank)].sort((a, b) => a - b))
  expect(new Set(order).size).toBeGreaterThan(1)
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
