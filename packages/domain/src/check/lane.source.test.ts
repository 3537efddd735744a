import { describe, expect, test } from 'vitest'
import { metres, metresPerSecond, metresPerSecondSquared, seconds } from '../quantities'
import { constantLaneMargin, rollingLaneMargin } from './lane'

function opponent(x: number, y: number, speed: number, reaction: number, reach: number) {
  return {
    along: metres(x),
    off: metres(y),
    speed: metresPerSecond(speed),
    reaction: seconds(reaction),
    reach: metres(reach),
  }
}

function expectNear(actual: number, expected: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(Math.abs(expected) * 0.0005)
}

/** What a test of the foot of the perpendicular alone would say: right only for an opponent on the way itself. */
function marginAtFoot(x: number, y: number, ballSpeed: number, speed: number, reaction: number, reach: number): number {
  return reaction + (y - reach) / speed - x / ballSpeed
}

// Source: worked values for s* = x + yρ/√(1−ρ²), ρ = vd/vb, clamped to the lane, and
// margin = tr + (y/vd)·√(1−ρ²) − x/vb − r/vd (geometry; six digits, so half a per mille covers the rounding).
const constant = [
  ['LANE-02', 10, 3, 12, 5, 0.7, 0.5, 20, 11.375, 0.312102],
  ['LANE-03', 10, 0.7, 12, 5, 0.7, 0, 20, 10.3208, -0.00606503],
  ['LANE-04', 10, 0.8, 12, 5, 0.7, 0, 20, 10.3667, 0.0121162],
  ['LANE-05', 15, 3, 8, 5, 0.3, 0.5, 25, 17.4019, -1.20663],
  ['LANE-06', 19, 2, 12, 5, 0.7, 0.5, 20, 19.9167, -0.61971],
  ['LANE-07', 8, 1.5, 15, 4.5, 0.25, 1, 15, 8.47173, -0.187576],
] as const

describe('one opponent at rest beside a pass of constant speed, closed form over the whole lane', () => {
  test.each(constant)('%s', (_, x, y, ballSpeed, speed, reaction, reach, length, at, margin) => {
    const found = constantLaneMargin(metresPerSecond(ballSpeed), metres(length), opponent(x, y, speed, reaction, reach))
    expectNear(found.at, at)
    expectNear(found.margin, margin)
  })

  test.each(constant)('%s: the foot of the perpendicular promises more than the whole lane keeps', (...row) => {
    const [, x, y, ballSpeed, speed, reaction, reach, , , margin] = row
    expect(marginAtFoot(x, y, ballSpeed, speed, reaction, reach)).toBeGreaterThan(margin + 0.002)
  })

  test('LANE-03: the foot of the perpendicular calls a lane open that the opponent closes', () => {
    const [, x, y, ballSpeed, speed, reaction, reach, length] = constant[1]
    expect(marginAtFoot(x, y, ballSpeed, speed, reaction, reach)).toBeGreaterThan(0)
    const found = constantLaneMargin(metresPerSecond(ballSpeed), metres(length), opponent(x, y, speed, reaction, reach))
    expect(found.margin).toBeLessThan(0)
  })
})

// Source: y_crit = (x/vb + r/vd − tr)·vd/√(1−ρ²): the margin is zero there. Six digits.
describe('critical distance off the lane', () => {
  test.each([
    ['YCRIT-01', 10, 12, 5, 0.7, 0, 0.733359],
    ['YCRIT-03', 5, 10, 4, 0.5, 0.5, 0.545545],
  ])('%s: nearer is closed, further is open', (_, x, ballSpeed, speed, reaction, reach, critical) => {
    const marginAt = (y: number) =>
      constantLaneMargin(metresPerSecond(ballSpeed), metres(40), opponent(x, y, speed, reaction, reach)).margin
    expect(marginAt(critical - 0.001)).toBeLessThan(0)
    expect(marginAt(critical + 0.001)).toBeGreaterThan(0)
    expect(Math.abs(marginAt(critical))).toBeLessThan(0.0001)
  })
})

// Source: geometry of a standing block: closed exactly if x + √(r² − y²) ≥ tr·vb. Exact; no tolerance.
describe('LANE-REACH: an opponent who already reaches the lane', () => {
  test.each([
    [10, true],
    [10.8, true],
    [12, false],
  ])('a ball of %d m/s is blocked: %s', (ballSpeed, blocked) => {
    const found = constantLaneMargin(metresPerSecond(ballSpeed), metres(20), opponent(5, 0.3, 5, 0.5, 0.5))
    expect(found.at).toBeCloseTo(5.4, 12)
    expect(found.margin <= 1e-12).toBe(blocked)
  })
})

// Source: the same minimum for T_ball(s) = (v0 − √(v0² − 2as))/a, found on a grid of 400,001 places: place to 1 cm, margin to
// half a millisecond.
test('LANE-DEC-02: a ball that slows down, whole lane', () => {
  const ball = { releaseSpeed: metresPerSecond(9), deceleration: metresPerSecondSquared(0.8) }
  const found = rollingLaneMargin(ball, metres(20), opponent(10, 4, 4, 0.5, 0.5))
  expect(Math.abs(found.at - 12.3801)).toBeLessThanOrEqual(0.01)
  expect(Math.abs(found.margin - 0.0667902)).toBeLessThanOrEqual(0.0005)
})
