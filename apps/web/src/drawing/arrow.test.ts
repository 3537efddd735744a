import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { arrivalOf, filledHead, placeOnShaft, shaftBetween, shaftPath } from './arrow'
import { directionTo, gapBetween, type PaperPoint } from './paper-point'

const place = fc.record({
  x: fc.double({ min: -60, max: 60, noNaN: true }),
  y: fc.double({ min: -120, max: 0, noNaN: true }),
})
const clearance = fc.double({ min: 0, max: 3, noNaN: true })

test('a long path keeps its clearance from both rings', () => {
  const shaft = shaftBetween({ x: 0, y: 0 }, { x: 0, y: -20 }, 1.65, 1.7)
  expect(shaft.start).toEqual({ x: 0, y: -1.65 })
  expect(shaft.tip).toEqual({ x: 0, y: -18.3 })
})

test('a path never turns round, however near the places are', () => {
  fc.assert(
    fc.property(place, place, clearance, clearance, (from, to, leaving, reaching) => {
      fc.pre(gapBetween(from, to) > 0.01)
      const shaft = shaftBetween(from, to, leaving, reaching)
      const wanted = directionTo(from, to)
      const drawn = directionTo(shaft.start, shaft.tip)
      expect(drawn.x * wanted.x + drawn.y * wanted.y).toBeGreaterThan(0.99)
    }),
  )
})

test('a straight path stays on the line between its places', () => {
  fc.assert(
    fc.property(place, place, fc.double({ min: 0, max: 1, noNaN: true }), (from, to, share) => {
      const at = placeOnShaft(shaftBetween(from, to, 0, 0), share)
      expect(gapBetween(from, at) + gapBetween(at, to)).toBeCloseTo(gapBetween(from, to), 6)
    }),
  )
})

test('a bowed path leaves the line by its share of the length, to the right of the way it goes', () => {
  const shaft = shaftBetween({ x: 0, y: 0 }, { x: 0, y: -20 }, 0, 0, 0.1)
  expect(placeOnShaft(shaft, 0.5)).toEqual({ x: 2, y: -10 })
  expect(arrivalOf(shaft).x).toBeLessThan(0)
})

test('a head points the way the path arrives, its base as far behind as it is long', () => {
  const numbers = (filledHead({ x: 0, y: -10 }, { x: 0, y: -1 }, 1).match(/-?[\d.]+/g) ?? []).map(Number)
  const corners: PaperPoint[] = []
  for (let index = 0; index < numbers.length; index += 2) {
    corners.push({ x: numbers[index] ?? 0, y: numbers[index + 1] ?? 0 })
  }
  expect(corners[0]).toEqual({ x: 0, y: -10 })
  expect(corners[1]).toEqual({ x: -0.42, y: -9 })
  expect(corners[3]).toEqual({ x: 0.42, y: -9 })
})

test('the shaft ends before its tip, so that the line does not stick out of the head', () => {
  const shaft = shaftBetween({ x: 0, y: 0 }, { x: 10, y: 0 }, 0, 0)
  expect(shaftPath(shaft, 0.8)).toBe('M0 0L9.2 0')
})
