import { expect, test } from 'vitest'
import { blockRounds, roundsText } from './block-rounds'
import { patternActivity } from './evening-parts'
import { examplePlan } from './plan.fixture'

const pattern = patternActivity(examplePlan)
if (pattern === null) throw new Error('the example evening holds a pattern')

test('every round of the activity belongs to exactly one line-up', () => {
  const blocks = blockRounds(pattern)
  const all = blocks.flat().toSorted((a, b) => a - b)
  expect(all).toEqual(Array.from({ length: blocks.length * pattern.roundsABlock }, (_, index) => index + 1))
})

test('line-ups that take turns play every second round', () => {
  const blocks = pattern.lineups?.blocks.slice(0, 2) ?? []
  const lineups = pattern.lineups === null ? null : { ...pattern.lineups, blocks }
  expect(blockRounds({ ...pattern, lineups, roundsABlock: 3, takeTurns: 2 })).toEqual([
    [1, 3, 5],
    [2, 4, 6],
  ])
  expect(blockRounds({ ...pattern, lineups, roundsABlock: 3, takeTurns: 1 })).toEqual([
    [1, 2, 3],
    [4, 5, 6],
  ])
})

test.each([
  [[], ''],
  [[4], '4'],
  [[1, 2, 3], '1–3'],
  [[1, 3, 5], '1, 3, 5'],
])('rounds %j are written "%s"', (rounds, text) => {
  expect(roundsText(rounds)).toBe(text)
})
