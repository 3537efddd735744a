import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { inserted, moved, removed } from './list-edits'

test('moving there and back gives the list, and leaving the list is no move', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer(), { minLength: 1 }),
      fc.nat(30),
      fc.integer({ min: -30, max: 30 }),
      (list, at, by) => {
        const once = moved(list, at, by)
        expect([...once].sort()).toEqual([...list].sort())
        expect(once === list && by !== 0 ? list : moved(once, at + by, -by)).toEqual(list)
      },
    ),
  )
})

test('what is put in is taken out again', () => {
  expect(removed(inserted([1, 2], 1, 9), 1)).toEqual([1, 2])
  expect(inserted([1, 2], 2, 9)).toEqual([1, 2, 9])
})
