import fc from 'fast-check'
import type { LineupRequest } from '../types'
import { randomRequest } from './random-request'

/** Small evenings that can be filled, with and without a goalkeeper; sides in any order. */
export const requestArbitrary: fc.Arbitrary<LineupRequest> = fc
  .record({
    seed: fc.nat({ max: 1_000_000 }),
    spare: fc.nat({ max: 4 }),
    positions: fc.integer({ min: 1, max: 7 }),
    choices: fc.integer({ min: 1, max: 3 }),
    withGoalkeeper: fc.boolean(),
    pastMost: fc.nat({ max: 12 }),
    sides: fc.array(fc.constantFrom('left' as const, 'right' as const), { minLength: 1, maxLength: 8 }),
  })
  .map(({ spare, sides, ...shape }) => ({
    ...randomRequest({ ...shape, children: shape.positions + spare, blocks: sides.length }),
    blocks: sides.map((side) => ({ side })),
  }))
