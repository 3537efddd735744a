import { expect, test } from 'vitest'
import type { LineupPlan } from '../lineups'
import { waitSeconds } from './practise-pattern'

function lineups(offs: readonly (readonly string[])[]): LineupPlan {
  const blocks = offs.map((off) => ({ side: 'left' as const, places: [], off }))
  return { blocks, sumOfSquares: 0, sideSumOfSquares: 0, changes: 0, fairnessProven: true, changesProven: true }
}

test('without opponents a child waits out each block it is off, and blocks in a row add up', () => {
  expect(waitSeconds(lineups([['a'], ['b'], ['a']]), 0, 4, 60)).toBe(240)
  expect(waitSeconds(lineups([['a', 'b'], ['b', 'c'], ['a']]), 0, 4, 60)).toBe(480)
})

test('those off take turns as opponents: three for one place wait two rounds, as many as places none', () => {
  expect(waitSeconds(lineups([['a', 'b', 'c']]), 1, 4, 60)).toBe(120)
  expect(waitSeconds(lineups([['a', 'b']]), 2, 4, 60)).toBe(0)
})

test('nobody off, nobody waits', () => {
  expect(waitSeconds(lineups([[], []]), 0, 4, 60)).toBe(0)
})
