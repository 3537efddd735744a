import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { millimetres } from '../quantities'
import { paces } from './paces'

describe('a length in a coach’s own paces', () => {
  test('ten metres at 0.75 m are 13 paces and a quarter metre', () => {
    expect(paces(millimetres(10_000), millimetres(750))).toEqual({ paces: 13, remainderMm: 250 })
  })

  test('paces and remainder are the length, and the remainder is less than a pace', () => {
    const length = fc.integer({ min: 0, max: 150_000 }).map(millimetres)
    const pace = fc.integer({ min: 300, max: 1500 }).map(millimetres)
    fc.assert(
      fc.property(length, pace, (any, paceMm) => {
        const walked = paces(any, paceMm)
        expect(walked.paces * paceMm + walked.remainderMm).toBe(any)
        expect(walked.remainderMm).toBeGreaterThanOrEqual(0)
        expect(walked.remainderMm).toBeLessThan(paceMm)
      }),
    )
  })

  test('a pace without length, or a walk back, is a bug', () => {
    expect(() => paces(millimetres(10), millimetres(0))).toThrow('pace')
    expect(() => paces(millimetres(-1), millimetres(750))).toThrow('negative')
  })
})
