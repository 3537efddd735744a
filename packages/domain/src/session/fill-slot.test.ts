import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { minutes } from '../quantities'
import { activitiesThatFit, fillSlot, shareMinutes, type TimeClaim } from './fill-slot'

function claim(weight: number, minMinutes = 8, maxMinutes = 90): TimeClaim {
  return { weight, minMinutes, maxMinutes, title: 'A' }
}

const claims = fc.array(
  fc.integer({ min: 0, max: 40 }).map((weight) => claim(weight)),
  { minLength: 1, maxLength: 5 },
)

describe('the slot', () => {
  test('is filled exactly, end to end, in whole minutes, whatever the weights and the adults', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 120 }), fc.integer({ min: 1, max: 2 }), claims, (slot, adults, wanted) => {
        const { activities, pauses } = fillSlot(minutes(slot), adults, wanted)
        const parts = [...activities, ...pauses].toSorted(
          (a, b) => a.startMinute - b.startMinute || a.minutes - b.minutes,
        )
        let end = 0
        for (const part of parts) {
          expect(part.startMinute).toBe(end)
          end += part.minutes
        }
        expect(end).toBe(slot)
      }),
    )
  })

  test('shares sum to the total and keep limits that can be kept', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 90 }), fc.integer({ min: 1, max: 60 }), (total, weight) => {
        const shares = shareMinutes(total, [claim(20), claim(weight, 12, 15), claim(20)])
        expect(shares.reduce((a, b) => a + b, 0)).toBe(total)
        expect(shares[1]).toBeGreaterThanOrEqual(12)
        expect(shares[1]).toBeLessThanOrEqual(15)
        expect(Math.min(...shares)).toBeGreaterThanOrEqual(8)
      }),
    )
  })

  test('one adult alone needs three minutes for a change-over, two need two', () => {
    const between = (adults: number) => fillSlot(minutes(60), adults, [claim(1), claim(1)]).pauses[0]?.minutes
    expect([between(1), between(2)]).toEqual([3, 2])
  })

  test('takes fewer activities where each would be too short', () => {
    expect(activitiesThatFit(75, 1, 4)).toBe(4)
    expect(activitiesThatFit(30, 1, 4)).toBe(2)
    expect(activitiesThatFit(5, 1, 4)).toBe(1)
  })
})
