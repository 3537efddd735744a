import fc from 'fast-check'
import { expect, test } from 'vitest'
import { patternArbitrary } from './fixtures/arbitrary-pattern'
import { samplePattern } from './fixtures/sample-pattern'
import { mirrorPattern, mirrorPosition } from './mirror'
import { checkShape } from './rules'

test.each([
  ['LCB', 'RCB'],
  ['LB', 'RB'],
  ['LW', 'RW'],
  ['LM', 'RM'],
  ['LWB', 'RWB'],
  ['LF', 'RF'],
  ['GK', 'GK'],
  ['CM', 'CM'],
  ['ST', 'ST'],
  // A name that only begins like a side is left alone.
  ['LIBERO', 'LIBERO'],
  ['ROVER', 'ROVER'],
])('%s mirrors to %s and back', (position, mirrored) => {
  expect(mirrorPosition(position)).toBe(mirrored)
  expect(mirrorPosition(mirrored)).toBe(position)
})

test('mirroring twice gives any document back', () => {
  fc.assert(
    fc.property(patternArbitrary, (document) => {
      expect(mirrorPattern(mirrorPattern(document))).toEqual(document)
    }),
  )
  expect(mirrorPattern(mirrorPattern(samplePattern))).toEqual(samplePattern)
})

test('a mirrored document meets the structural rules', () => {
  expect(checkShape(mirrorPattern(samplePattern))).toEqual([])
})

test('the side, the players, their places and their runs change side; feet and words do not', () => {
  const mirrored = mirrorPattern(samplePattern)
  expect(mirrored.writtenFor).toBe('left')
  expect(mirrored.positions[2]).toEqual({
    position: 'LCB',
    spot: { landmark: 'penalty-area-corner-left', upMm: 0, rightMm: 3000 },
  })
  expect(mirrored.steps[1]?.action).toMatchObject({ from: 'LCB', to: 'LW', foot: 'either' })
  expect(mirrored.steps[1]?.runs[0]?.to.rightMm).toBe(-6000)
  expect(mirrored.looks[0]?.answers[0]?.about).toBe('LW')
  expect(mirrored.teaching).toEqual(samplePattern.teaching)
})
