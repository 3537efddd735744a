import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { gapBetween } from './paper-point'
import { WAVE_AMPLITUDE, wavePlaces } from './wave'

const place = fc.record({
  x: fc.double({ min: -60, max: 60, noNaN: true }),
  y: fc.double({ min: -120, max: 0, noNaN: true }),
})

test('a wave starts and ends exactly where it should and never leaves its line further than its amplitude', () => {
  fc.assert(
    fc.property(place, place, (from, to) => {
      const length = gapBetween(from, to)
      fc.pre(length > 0.5)
      const places = wavePlaces(from, to, WAVE_AMPLITUDE)
      expect(gapBetween(places[0] ?? to, from)).toBeLessThan(1e-9)
      expect(gapBetween(places.at(-1) ?? from, to)).toBeLessThan(1e-9)
      for (const at of places) {
        const across = ((to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x)) / length
        expect(Math.abs(across)).toBeLessThanOrEqual(WAVE_AMPLITUDE + 1e-9)
      }
    }),
  )
})

test('a carry of ten metres really waves: it crosses its line several times and reaches its amplitude', () => {
  const asides = wavePlaces({ x: 0, y: 0 }, { x: 10, y: 0 }, WAVE_AMPLITUDE).map(({ y }) => y)
  const crossings = asides.filter((y, index) => index > 0 && y * (asides[index - 1] ?? 0) < 0)
  expect(crossings.length).toBeGreaterThanOrEqual(5)
  expect(Math.max(...asides)).toBeGreaterThan(WAVE_AMPLITUDE * 0.9)
})
