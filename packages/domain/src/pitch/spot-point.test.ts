import { describe, expect, test } from 'vitest'
import { point } from '../geometry'
import { millimetres } from '../quantities'
import { nominalSpace } from './nominal-space'
import type { Space } from './space'
import { nearestSpot, spotPoint } from './spot-point'

const sevens = nominalSpace('us-7v7')

describe('places and spots', () => {
  test('a place is told from its nearest landmark, up and right of it', () => {
    expect(nearestSpot(sevens, point(12, -10))).toEqual({
      landmark: 'penalty-area-corner-left',
      upMm: 1027,
      rightMm: 973,
    })
  })

  test('where two landmarks are one place, the first of the list names it', () => {
    const widthMm = millimetres(7315)
    const asWideAsGoalArea: Space = { ...sevens, goals: [{ end: 'own', widthMm, movable: false }] }
    expect(nearestSpot(asWideAsGoalArea, point(0, 3.6575)).landmark).toBe('goal-post-right')
  })

  test('a spot moves with its landmark to another space', () => {
    const spot = { landmark: 'corner-right', upMm: millimetres(8000), rightMm: millimetres(-1500) } as const
    expect(spotPoint(sevens, spot)).toEqual(point(8, 18.288 - 1.5))
    expect(spotPoint({ ...sevens, widthMm: millimetres(30_000) }, spot)).toEqual(point(8, 13.5))
  })

  test('a spot whose landmark the space does not have has no place', () => {
    const spot = { landmark: 'build-out-line-left', upMm: millimetres(0), rightMm: millimetres(0) } as const
    expect(spotPoint(nominalSpace('us-9v9'), spot)).toBeNull()
  })

  test('a place outside the space still has a spot', () => {
    const spot = nearestSpot(sevens, point(-2, 20))
    expect(spot).toEqual({ landmark: 'corner-right', upMm: -2000, rightMm: 1712 })
  })
})
