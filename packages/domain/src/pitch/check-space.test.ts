import { describe, expect, test } from 'vitest'
import { FORMAT_IDS } from '../formats'
import { millimetres } from '../quantities'
import { checkSpace } from './check-space'
import { nominalSpace } from './nominal-space'
import type { Space } from './space'

const sevens = nominalSpace('us-7v7')

function codesOf(change: Partial<Space>): readonly string[] {
  return checkSpace({ ...sevens, ...change }).map((note) => note.code)
}

describe('notes on a space', () => {
  test.each(FORMAT_IDS)('the nominal pitch of %s raises none', (formatId) => {
    expect(checkSpace(nominalSpace(formatId))).toEqual([])
  })

  // Source: U.S. Soccer Player Development Initiatives, Small-Sided Games Chart, 2017: 55–65 by 35–45 yards.
  test.each([
    ['at the least size', 50_292, 32_004, []],
    ['a millimetre short', 50_291, 32_004, ['shorter-than-format']],
    ['at the largest size', 59_436, 41_148, []],
    ['a millimetre too long', 59_437, 41_148, ['longer-than-format']],
    ['too narrow', 55_000, 32_003, ['narrower-than-format']],
    ['too wide', 55_000, 41_149, ['wider-than-format']],
  ])('a U.S. 7v7 pitch %s', (_, length, width, expected) => {
    expect(codesOf({ lengthMm: millimetres(length), widthMm: millimetres(width) })).toEqual(expected)
  })

  test('a note carries the value, the limit, and where the limit is from', () => {
    expect(checkSpace({ ...sevens, lengthMm: millimetres(48_000) })[0]).toEqual({
      code: 'shorter-than-format',
      sentence: 'The length is 48.0 m; the format asks for at least 50.3 m.',
      valueMm: 48_000,
      limitMm: 50_292,
      kind: 'published',
      source: 'U.S. Soccer Player Development Initiatives, Small-Sided Games Chart, 2017',
    })
  })

  test('wider than long is said of every space, by the law only of a whole pitch', () => {
    const wide = { lengthMm: millimetres(30_000), widthMm: millimetres(36_000) }
    const kinds = (['whole', 'half', 'plain'] as const).map(
      (covers) => checkSpace({ ...sevens, ...wide, covers }).find((note) => note.code === 'wider-than-long')?.kind,
    )
    expect(kinds).toEqual(['published', 'computed', 'computed'])
  })

  test('a half is held against half of the range, a plain rectangle against none', () => {
    expect(codesOf({ covers: 'half', lengthMm: millimetres(25_146) })).toEqual(['wider-than-long'])
    expect(codesOf({ covers: 'half', lengthMm: millimetres(25_145) })).toEqual([
      'shorter-than-format',
      'wider-than-long',
    ])
    expect(codesOf({ covers: 'plain', lengthMm: millimetres(200_000), widthMm: millimetres(90_000) })).toEqual([])
  })

  test('an area without room is named, and a build-out line without room', () => {
    const small = { covers: 'half', lengthMm: millimetres(10_000), widthMm: millimetres(20_000) } as const
    expect(codesOf(small)).toEqual([
      'shorter-than-format',
      'narrower-than-format',
      'wider-than-long',
      'penalty-area-does-not-fit',
      'penalty-area-does-not-fit',
      'build-out-line-does-not-fit',
    ])
  })

  test('goals: none to build out from, too wide, and movable ones to anchor', () => {
    expect(codesOf({ goals: [] })).toEqual(['no-own-goal'])
    expect(codesOf({ goals: [{ end: 'own', widthMm: millimetres(7320), movable: true }] })).toEqual([
      'goal-wider-than-format',
      'goal-movable',
    ])
    const note = checkSpace({ ...sevens, goals: [{ end: 'own', widthMm: millimetres(3000), movable: true }] })[0]
    expect(note?.sentence).toMatch(/anchor it.*local rules decide/)
  })

  test('a goal wider than the space asks to measure again', () => {
    const strip = { covers: 'plain', widthMm: millimetres(5000) } as const
    expect(codesOf({ ...strip, goals: [{ end: 'own', widthMm: millimetres(5000), movable: false }] })).not.toContain(
      'goal-wider-than-space',
    )
    expect(codesOf({ ...strip, goals: [{ end: 'own', widthMm: millimetres(5001), movable: false }] })).toContain(
      'goal-wider-than-space',
    )
  })
})
