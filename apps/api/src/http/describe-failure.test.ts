import { expect, test } from 'vitest'
import { describeFailure, failureLine } from './describe-failure'

test('of a message no line reaches the log, however many it has', () => {
  const error = Object.assign(new Error('bad row:\nKey (name)=(Ada)\n    at home\nBen'), { code: '23505' })
  const told = describeFailure(error)
  expect(told).toMatchObject({ name: 'Error', code: '23505' })
  expect(told.stack).toMatch(/^ {4}at .*describe-failure\.test/)
  expect(JSON.stringify([told, failureLine(error)])).not.toMatch(/bad row|Ada|home|Ben/)
})

test('a stack without frames, and what is no error, tell nothing', () => {
  expect(describeFailure({ name: 'Odd', stack: 'Odd: Ada\nBen' })).toEqual({ name: 'Odd', code: null, stack: null })
  expect(describeFailure(null)).toEqual({ name: 'unknown', code: null, stack: null })
})
