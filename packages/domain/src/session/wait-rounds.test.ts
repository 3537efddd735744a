import { expect, test } from 'vitest'
import { longestWaitRounds, roundOrder } from './wait-rounds'

function blocks(...offs: readonly (readonly string[])[]) {
  return offs.map((off) => ({ off }))
}

test('without opponents a child waits out each block it is off, and blocks in a row add up', () => {
  expect(longestWaitRounds(blocks(['a'], ['b'], ['a']), 0, 4, 1)).toBe(4)
  expect(longestWaitRounds(blocks(['a', 'b'], ['b', 'c'], ['a']), 0, 4, 1)).toBe(8)
})

test('line-ups that take turns leave a child off for one round at a time', () => {
  expect(roundOrder(4, 2, 2)).toEqual([0, 1, 0, 1, 2, 3, 2, 3])
  expect(longestWaitRounds(blocks(['a'], ['b']), 0, 4, 2)).toBe(1)
  expect(longestWaitRounds(blocks(['a'], ['a', 'b']), 0, 4, 2)).toBe(8)
})

test('those off defend in turn: three for one place wait two rounds, as many as places none', () => {
  expect(longestWaitRounds(blocks(['a', 'b', 'c']), 1, 6, 1)).toBe(2)
  expect(longestWaitRounds(blocks(['a', 'b']), 2, 4, 1)).toBe(0)
})

test('nobody off, nobody waits', () => {
  expect(longestWaitRounds(blocks([], []), 0, 4, 1)).toBe(0)
})
