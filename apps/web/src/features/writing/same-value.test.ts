import { expect, test } from 'vitest'
import { sameValue } from './same-value'

test.each([
  [{ a: 1, b: [1, 2] }, { b: [1, 2], a: 1 }, true],
  [{ a: 1 }, { a: 1, b: undefined }, false],
  [[1, 2], [2, 1], false],
  [[], {}, false],
  [null, {}, false],
  [{ a: null }, { a: null }, true],
])('%j and %j: %s', (one, other, same) => {
  expect(sameValue(one, other)).toBe(same)
  expect(sameValue(other, one)).toBe(same)
})
