import { describe, expect, test } from 'vitest'
import { point } from '../../geometry'
import { samplePattern } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace } from '../../pitch'
import { coverRules } from './cover-rules'
import type { Hole, XCover } from './look-cover'
import { sayCover, sayHole } from './say-cover'

const rules = coverRules(samplePattern, nominalSpace('us-7v7'), {})
const players = [
  { position: 'RCB', point: point(12, 6) },
  { position: 'CM', point: point(20, 6) },
  { position: 'ST', point: point(50, -6) },
]

describe('a hole is named by the own players round it', () => {
  test.each([
    ['X between CM and RCB', 16.5, 7],
    ['X in front of CM', 22, 6.5],
    ['X behind RCB', 10, 6.5],
    ['X beside RCB', 12.5, 9],
  ])('%s', (words, up, right) => {
    expect(sayHole({ players }, rules, [point(up, right)])).toBe(words)
  })

  test('by a line or corner where none of them is near', () => {
    expect(sayHole({ players }, rules, [point(0.5, -17.5)])).toBe('X near the left corner')
    expect(sayHole({ players }, rules, [point(35, 0)])).toMatch(/^X near the /u)
  })

  test('one after the other where it takes more than one X', () => {
    expect(sayHole({ players }, rules, [point(10, 6.5), point(22, 6.5)])).toBe('X behind RCB and X in front of CM')
  })
})

describe('the sentence of a cover', () => {
  const hole = (words: string): Hole => ({ at: [], words })
  const cover = (open: number, placements: number, holes: readonly Hole[] = []): Omit<XCover, 'sentence'> => ({
    opponents: 2,
    placements,
    open,
    perMille: placements === 0 ? null : Math.floor((open * 1000) / placements),
    ways: [],
    holes,
  })

  test.each([
    [
      cover(876, 1000, [hole('X between CM and RCB')]),
      'Open from 87 % of the places where two X may stand; hole: X between CM and RCB.',
    ],
    [
      cover(5, 1000, [hole('X behind CM'), hole('X beside RW')]),
      'Open from less than 1 % of the places where two X may stand; holes: X behind CM; X beside RW.',
    ],
    [cover(9999, 10_000), 'Open from 99 % of the places where two X may stand; holes are few and scattered.'],
    [cover(10, 10), 'Open from all of the places where two X may stand.'],
    [cover(0, 10, [hole('X behind CM')]), 'Open from none of the places where two X may stand; hole: X behind CM.'],
    [cover(0, 0), 'There is no room for two X here.'],
  ])('%#: rounds down and names the holes', (given, sentence) => {
    expect(sayCover(given)).toBe(sentence)
  })
})
