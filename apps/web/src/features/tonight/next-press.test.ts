import { expect, test } from 'vitest'
import { nextPress } from './next-press'

const start = { stops: 12, putDown: 0, hasPattern: true, isOver: false }

test('first everything is set out, then it is run, then it is reported', () => {
  expect(nextPress(start)).toBe('set-out')
  expect(nextPress({ ...start, putDown: 7 })).toBe('set-out')
  expect(nextPress({ ...start, putDown: 12 })).toBe('line-ups')
  expect(nextPress({ ...start, putDown: 12, hasPattern: false })).toBe('plan')
  expect(nextPress({ ...start, isOver: true })).toBe('report')
})

test('where nothing is to be set out, the evening starts at once', () => {
  expect(nextPress({ ...start, stops: 0 })).toBe('line-ups')
})
