import { expect, test } from 'vitest'
import { shaftBetween } from './arrow'
import { labelPlace, placeAround } from './label-place'
import { gapBetween } from './paper-point'

const shaft = shaftBetween({ x: 0, y: 0 }, { x: 0, y: -20 }, 0, 0)

test('with nothing in the way a number stands at the middle of its path, to the right', () => {
  expect(labelPlace(shaft, 1, [])).toEqual({ x: 1, y: -10 })
})

test('a ring on the right sends the number to the left', () => {
  expect(labelPlace(shaft, 1, [{ at: { x: 1.5, y: -10 }, reach: 1.35 }])).toEqual({ x: -1, y: -10 })
})

test('rings on both sides move it along the path, clear of both', () => {
  const rings = [
    { at: { x: 1.5, y: -10 }, reach: 1.35 },
    { at: { x: -1.5, y: -10 }, reach: 1.35 },
  ]
  const at = labelPlace(shaft, 1, rings)
  for (const ring of rings) expect(gapBetween(ring.at, at)).toBeGreaterThan(ring.reach)
})

test('round a place a label goes where nothing else is', () => {
  const north = { at: { x: 0, y: -2 }, reach: 1.4 }
  const at = placeAround({ x: 0, y: 0 }, 2, [north], 3)
  expect(at.x).toBeCloseTo(0, 9)
  expect(at.y).toBeCloseTo(2, 9)
})
