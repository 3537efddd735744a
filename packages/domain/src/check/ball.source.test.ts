import { describe, expect, test } from 'vitest'
import { metres, metresPerSecond, metresPerSecondSquared, seconds } from '../quantities'
import {
  decelerationFromRoll,
  releaseSpeedFor,
  rolledLength,
  rollingDuration,
  rollingSpeed,
  stopDistance,
} from './ball'
import { BALL_DECELERATION, SURFACES } from './surfaces'

/** Values are given to six digits: half a per mille covers the rounding. */
const RELATIVE = 0.0005

function near(actual: number, expected: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(Math.abs(expected) * RELATIVE + 1e-9)
}

function ball(releaseSpeed: number, deceleration: number) {
  return { releaseSpeed: metresPerSecond(releaseSpeed), deceleration: metresPerSecondSquared(deceleration) }
}

// Source: elementary mechanics of constant deceleration, t = (v0 − √(v0² − 2ad))/a, v = √(v0² − 2ad); worked by hand.
describe('constant deceleration, elementary mechanics', () => {
  test.each([
    ['ROLL-01', 10, 0.8, 10, 1.04356, 9.16515],
    ['ROLL-02', 8, 1.2, 20, 3.33333, 4.0],
    ['ROLL-04, just arriving', 6, 0.9, 20, 6.66667, 0],
    ['ROLL-06', 9, 0.7, 15, 1.79148, 7.74597],
    ['ROLL-08', 5, 1.0, 8, 2.0, 3.0],
  ])('%s: %d m/s, %d m/s², %d m takes %d s and arrives at %d m/s', (_, speed, slowing, length, time, arrival) => {
    near(rollingDuration(ball(speed, slowing), metres(length)) ?? Number.NaN, time)
    near(rollingSpeed(ball(speed, slowing), metres(length)), arrival)
    near(rolledLength(ball(speed, slowing), seconds(time)), length)
  })

  test('ROLL-03: 6 m/s at 1.0 m/s² never makes 20 m: it stops at 18 m after 6 s', () => {
    expect(rollingDuration(ball(6, 1), metres(20))).toBeNull()
    near(stopDistance(ball(6, 1)), 18)
    near(rolledLength(ball(6, 1), seconds(6)), 18)
    near(rolledLength(ball(6, 1), seconds(60)), 18)
  })

  test('ROLL-REQ-02: to arrive at 3 m/s over 10 m at 0.6 m/s² a ball leaves at 4.58258 m/s and takes 2.63763 s', () => {
    const release = releaseSpeedFor(metresPerSecond(3), metres(10), metresPerSecondSquared(0.6))
    near(release, 4.58258)
    near(rollingDuration(ball(release, 0.6), metres(10)) ?? Number.NaN, 2.63763)
  })
})

// Source: FIFA Quality Programme for Football Turf, ball roll (ramp 1 m high at 45°, 4–10 m); a = 0.6·g·h/d for a thin
// shell with I = 2/3·m·r², losses on the ramp ignored, so an upper bound.
describe('FIFA turf ball-roll band to deceleration', () => {
  test.each([
    ['BALL-03-6m', 6, 0.981],
    ['BALL-03-10m', 10, 0.5886],
  ])('%s: a roll of %d m means %d m/s²', (_, rollOut, expected) => {
    near(decelerationFromRoll(metres(1), metres(rollOut)), expected)
  })

  test('fast, normal and slow grass lie inside the band of 4 to 10 m; bad and heavy are called habit', () => {
    const slowest = decelerationFromRoll(metres(1), metres(4))
    const fastest = decelerationFromRoll(metres(1), metres(10))
    for (const surface of SURFACES) {
      const { value, kind } = BALL_DECELERATION[surface]
      expect(value >= fastest && value <= slowest).toBe(kind === 'published')
    }
  })
})
