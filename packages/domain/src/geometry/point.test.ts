import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { add, angleDegrees, between, distance, point, scale, subtract } from './point'

const place = fc
  .tuple(fc.integer({ min: -200_000, max: 200_000 }), fc.integer({ min: -200_000, max: 200_000 }))
  .map(([x, y]) => point(x / 1000, y / 1000))

describe('places and distances', () => {
  test('a right triangle with sides 3 and 4 has 5 across', () => {
    expect(distance(point(1, 2), point(4, 6))).toBe(5)
  })

  test('moving two places alike leaves their distance as it was', () => {
    fc.assert(
      fc.property(place, place, place, (a, b, move) => {
        expect(distance(add(a, move), add(b, move))).toBeCloseTo(distance(a, b), 9)
      }),
    )
  })

  test('a difference added back gives the place', () => {
    fc.assert(
      fc.property(place, place, (a, b) => {
        expect(distance(add(b, subtract(a, b)), a)).toBeLessThan(1e-9)
      }),
    )
  })

  test('half of a way is as far from both ends', () => {
    fc.assert(
      fc.property(place, place, (a, b) => {
        const middle = between(a, b, 0.5)
        expect(distance(a, middle)).toBeCloseTo(distance(middle, b), 9)
      }),
    )
  })

  test('no place carries a negative zero, so equal places compare as equal', () => {
    expect(scale(point(0, 1), -1)).toEqual(point(0, -1))
    expect(Object.is(point(-0, -0).x, 0)).toBe(true)
  })
})

describe('angles', () => {
  test.each([
    ['straight ahead', point(2, 0), 0],
    ['half way round to the side', point(1, 1), 45],
    ['square', point(0, 3), 90],
    ['square on the other side', point(0, -3), 90],
    ['behind', point(-5, 0), 180],
  ])('%s of up the pitch', (_, to, degrees) => {
    expect(angleDegrees(point(0, 0), point(1, 0), to)).toBeCloseTo(degrees, 12)
  })

  test.each([
    ['here to there', point(1, 2), point(0, 0)],
    ['there to here', point(0, 0), point(-1, -2)],
  ])('a place that is the corner itself makes no angle, %s', (_, a, b) => {
    expect(angleDegrees(point(0, 0), a, b)).toBe(0)
  })

  test('the angles of a triangle add up to 180 degrees', () => {
    fc.assert(
      fc.property(place, place, place, (a, b, c) => {
        fc.pre(distance(a, b) > 0.01 && distance(b, c) > 0.01 && distance(a, c) > 0.01)
        expect(angleDegrees(a, b, c) + angleDegrees(b, a, c) + angleDegrees(c, a, b)).toBeCloseTo(180, 6)
      }),
    )
  })

  test('a place has no direction to itself: the angle is 0', () => {
    expect(angleDegrees(point(3, 3), point(3, 3), point(9, 9))).toBe(0)
  })
})
