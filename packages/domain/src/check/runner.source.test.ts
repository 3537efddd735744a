import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { metres, metresPerSecond, metresPerSecondSquared } from '../quantities'
import { runDuration, runLength } from './runner'

function runner(acceleration: number, topSpeed: number) {
  return { acceleration: metresPerSecondSquared(acceleration), topSpeed: metresPerSecond(topSpeed) }
}

// Source: elementary mechanics, √(2D/A) while D ≤ v²/2A, else D/v + v/2A; worked by hand to six digits.
describe('bounded acceleration from rest, elementary mechanics', () => {
  test.each([
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the worked value as printed
    ['RUN-01, still accelerating', 3, 3, 5.5, 1.41421],
    ['RUN-03, top speed just reached', 5, 2.5, 5, 2.0],
    ['RUN-04, at top speed', 20, 3.5, 6.33, 4.06384],
  ])('%s: %d m at %d m/s² up to %d m/s takes %d s', (_, length, acceleration, top, expected) => {
    expect(Math.abs(runDuration(runner(acceleration, top), metres(length)) - expected)).toBeLessThan(expected * 0.0005)
  })
})

test('the length run after the time a length takes is that length', () => {
  const speeds = fc.record({
    a: fc.double({ min: 1, max: 6 }),
    v: fc.double({ min: 2, max: 9 }),
    d: fc.double({ min: 0, max: 60 }),
  })
  fc.assert(
    fc.property(speeds, ({ a, v, d }) => {
      fc.pre([a, v, d].every(Number.isFinite))
      const one = runner(a, v)
      expect(runLength(one, runDuration(one, metres(d)))).toBeCloseTo(d, 9)
    }),
  )
})
