import { coverOf } from '@espalier/domain/check'
import { mirrorPattern } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'
import { describe, expect, test } from 'vitest'
import { DEMO_PATTERNS } from './index'

describe.each(DEMO_PATTERNS.map((pattern) => [pattern.title, pattern] as const))('the looks of %s', (_, pattern) => {
  const space = nominalSpace(pattern.formatId)
  const covers = coverOf(pattern, space)

  test('have every answer, lettered as in the script, and the ball as drawn', () => {
    expect(covers.map((cover) => cover.lookId)).toEqual(pattern.looks.map((look) => look.lookId))
    covers.forEach((cover, index) => {
      const letters = pattern.looks[index]!.answers.map((_, at) => 'ABC'[at])
      expect(cover.ways.map((way) => way.letter).filter((letter) => letter !== null)).toEqual(letters)
      expect(cover.ways.filter((way) => way.letter === null)).toHaveLength(1)
      expect(cover.ways.every((way) => way.arrives)).toBe(true)
    })
  })

  test('show their sign long enough before the ball', () => {
    expect(covers.flatMap((cover) => cover.notes)).toEqual([])
  })

  test('are open from most places against one X, from fewer against two, from fewer still against three', () => {
    for (const { counts } of covers) {
      const shares = counts.map((each) => each.perMille ?? Number.NaN)
      expect(shares[0]).toBeGreaterThan(500)
      expect(shares).toEqual([...shares].sort((a, b) => b - a))
      expect(new Set(shares).size).toBe(3)
    }
  })

  test('have holes a coach can find: named by players or lines of this pattern', () => {
    for (const { counts } of covers) {
      for (const { holes, sentence } of counts) {
        expect(holes.length).toBeGreaterThan(0)
        expect(holes.length).toBeLessThanOrEqual(3)
        for (const { words } of holes) {
          expect(words).toMatch(/^X (between|in front of|behind|beside|near) /u)
          expect(sentence).toContain(words)
        }
      }
    }
  })

  test('are as open on the other side', () => {
    const mirrored = coverOf(mirrorPattern(pattern), space)
    const numbers = (all: typeof covers) =>
      all.map((cover) => cover.counts.map(({ open, placements }) => [open, placements]))
    expect(numbers(mirrored)).toEqual(numbers(covers))
  })
})
