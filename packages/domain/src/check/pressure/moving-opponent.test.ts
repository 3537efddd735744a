import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { distance, point } from '../../geometry'
import { metres, metresPerSecond, metresPerSecondSquared, seconds } from '../../quantities'
import { runDuration } from '../runner'
import { arrivalAt, durationOver, opponentAt, sendTo, whereIs } from './moving-opponent'

const runner = { acceleration: metresPerSecondSquared(3), topSpeed: metresPerSecond(6) }
const noReach = metres(0)
const place = fc.record({ x: fc.integer({ min: -20, max: 40 }), y: fc.integer({ min: -20, max: 20 }) })

describe('an opponent in motion', () => {
  test('runs from rest as every player does', () => {
    const standing = opponentAt(point(0, 0), runner)
    for (const length of [0.4, 3, 6, 20]) {
      const expected = 1 + runDuration(runner, metres(length))
      expect(arrivalAt(standing, point(length, 0), seconds(1), noReach)).toBeCloseTo(expected, 12)
    }
  })

  // Source: laws of motion under constant acceleration. From 2 m/s at 3 m/s² the top of 6 m/s comes after 4/3 s and
  // (36 − 4)/6 = 16/3 m; 10 m take 4/3 + (10 − 16/3)/6 = 19/9 s.
  test('keeps a start speed: 10 m from 2 m/s take 19/9 s', () => {
    expect(durationOver(runner, 2, 10)).toBeCloseTo(19 / 9, 12)
  })

  test('goes on at full speed where the new way is the old one', () => {
    const running = sendTo(opponentAt(point(0, 0), runner), point(30, 0), seconds(0))
    // Top speed is reached at 2 s after 6 m.
    const onward = sendTo(running, point(40, 0), seconds(3))
    expect(whereIs(onward, seconds(4)).x).toBeCloseTo(18, 12)
  })

  test('starts anew where the new way is square to the old one or back', () => {
    const running = sendTo(opponentAt(point(0, 0), runner), point(30, 0), seconds(0))
    for (const to of [point(12, 6), point(6, 0)]) {
      const turned = arrivalAt(running, to, seconds(3), noReach)
      expect(turned - 3).toBeCloseTo(runDuration(runner, distance(point(12, 0), to)), 12)
    }
  })

  test('is where it is sent when it is said to arrive, and never jumps when it is sent elsewhere', () => {
    fc.assert(
      fc.property(place, place, place, fc.integer({ min: 0, max: 6000 }), (from, first, second, milliseconds) => {
        const at = seconds(milliseconds / 1000)
        const running = sendTo(opponentAt(point(from.x, from.y), runner), point(first.x, first.y), seconds(0))
        const there = point(second.x, second.y)
        const turned = sendTo(running, there, at)
        expect(distance(whereIs(turned, at), whereIs(running, at))).toBeLessThan(1e-9)
        expect(distance(whereIs(turned, arrivalAt(running, there, at, noReach)), there)).toBeLessThan(1e-6)
      }),
    )
  })

  test('never outruns its top speed', () => {
    fc.assert(
      fc.property(place, place, fc.integer({ min: 0, max: 6000 }), (first, second, milliseconds) => {
        const at = milliseconds / 1000
        const running = sendTo(opponentAt(point(0, 0), runner), point(first.x, first.y), seconds(0))
        const turned = sendTo(running, point(second.x, second.y), seconds(at))
        for (let time = 0; time < at + 3; time += 0.1) {
          const step = distance(whereIs(turned, seconds(time)), whereIs(turned, seconds(time + 0.1)))
          expect(step).toBeLessThanOrEqual(runner.topSpeed * 0.1 + 1e-9)
        }
      }),
      { numRuns: 50 },
    )
  })
})
