import { checkPattern } from '@espalier/domain/check'
import { checkShape, firstSteps, mirrorPattern, missingTeaching, type PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'
import { describe, expect, test } from 'vitest'
import { DEMO_PATTERNS } from './index'

/** Errors compound along a pattern, so the young have short ones (habit: common practice, no source). */
const STEPS_MAX: Readonly<Record<string, number>> = { U10: 5, U12: 6 }

function toFix(document: PatternDocument) {
  return checkPattern(document, nominalSpace(document.formatId)).notes.filter((note) => note.severity === 'to-fix')
}

test('there are three, each with a title of its own', () => {
  expect(new Set(DEMO_PATTERNS.map((pattern) => pattern.title)).size).toBe(3)
})

describe.each(DEMO_PATTERNS.map((pattern) => [pattern.title, pattern] as const))('%s', (_, pattern) => {
  test('could be published: whole in structure and teaching, with nothing to fix on its pitch', () => {
    expect(checkShape(pattern)).toEqual([])
    expect(missingTeaching(pattern)).toEqual([])
    expect(toFix(pattern)).toEqual([])
  })

  test('could be published mirrored, and cut after any step', () => {
    expect(toFix(mirrorPattern(pattern))).toEqual([])
    for (let count = 1; count <= pattern.steps.length; count += 1) {
      const cut = firstSteps(pattern, count)
      expect(checkShape(cut)).toEqual([])
      expect(toFix(cut)).toEqual([])
    }
  })

  test('is no longer than its age can hold', () => {
    expect(pattern.steps.length).toBeLessThanOrEqual(STEPS_MAX[pattern.ageGroup] ?? 0)
  })

  test('has nobody late and no lane shut by its own poles', () => {
    const { notes } = checkPattern(pattern, nominalSpace(pattern.formatId))
    expect(notes.filter((note) => note.code === 'receiver-late' || note.code === 'lane-closed')).toEqual([])
  })

  test('has a way out over the press, in the air, when everything short is shut', () => {
    const exits = pattern.looks.map((look) => look.answers.at(-1))
    expect(exits.length).toBeGreaterThan(0)
    for (const exit of exits) {
      expect(exit).toMatchObject({ sign: 'all-shut', rejoins: 'exit' })
      expect(exit?.steps[0]?.action).toMatchObject({ kind: 'pass', height: 'air' })
    }
  })

  test('has an exit its players can kick: played as a pattern of its own the ball arrives', () => {
    for (const look of pattern.looks) {
      const at = pattern.steps.findIndex((step) => step.stepId === look.stepId)
      for (const answer of look.answers) {
        const played = { ...pattern, steps: [...pattern.steps.slice(0, at), ...answer.steps], looks: [] }
        expect(toFix(played)).toEqual([])
      }
    }
  })
})
