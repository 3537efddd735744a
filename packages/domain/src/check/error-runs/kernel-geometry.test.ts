import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { opponentAt, samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace } from '../../pitch'
import { metres, metresPerSecond, metresPerSecondSquared, seconds } from '../../quantities'
import { rolledLength, rollingDuration } from '../ball'
import { rollingLaneMargin } from '../lane'
import { makeErrorRunner } from './error-runner'
import { addLeg, locate } from './legs'
import {
  FROM_X,
  FROM_Y,
  makeMemory,
  PLACE_X,
  PLACE_Y,
  REACTION,
  RELEASE,
  STARTS_AT,
  THERE_AT,
  UNIT_X,
  UNIT_Y,
} from './memory'
import { opponentMeetsRoll } from './opponents'
import type { Program } from './program'
import { chaseSeconds, readyAt } from './reception'

const prepared = makeErrorRunner(
  { ...samplePattern, obstacles: [opponentAt('x1', spotAt('centre-mark'))], looks: [] },
  nominalSpace('us-7v7'),
)
if (!prepared.ok) throw new Error(prepared.refusal.detail)
const base = prepared.value.program

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true })

describe('whether an opponent meets a rolling ball', () => {
  test('is the sign of the smallest margin over the whole lane', () => {
    let closed = 0
    let open = 0
    fc.assert(
      fc.property(
        between(-10, 40),
        between(0, 20),
        between(1, 20),
        between(0.3, 2.5),
        between(0, 1),
        between(0.01, 0.999),
        (along, off, release, slow, reaction, share) => {
          const [speed, reach] = [metresPerSecond(5), metres(0.6)]
          const ball = { releaseSpeed: metresPerSecond(release), deceleration: metresPerSecondSquared(slow) }
          const length = metres((share * release * release) / (2 * slow))
          const opponent = { along: metres(along), off: metres(off), speed, reaction: seconds(reaction), reach }
          const { margin } = rollingLaneMargin(ball, length, opponent)
          if (Math.abs(margin) < 1e-6) return
          const program: Program = {
            ...base,
            opponents: 1,
            opponentX: Float64Array.of(along),
            opponentY: Float64Array.of(off),
            deceleration: slow,
            reaction,
            reach,
            topSpeed: speed,
          }
          const memory = makeMemory(program)
          memory.now[FROM_X] = 0
          memory.now[FROM_Y] = 0
          memory.now[UNIT_X] = 1
          memory.now[UNIT_Y] = 0
          memory.now[RELEASE] = release
          const window = rollingDuration(ball, length)!
          expect(opponentMeetsRoll(program, memory, window)).toBe(margin < 0)
          if (margin < 0) closed += 1
          else open += 1
        },
      ),
      { numRuns: 5000 },
    )
    // Both answers were asked for.
    expect(Math.min(closed, open)).toBeGreaterThan(500)
  })
})

describe('a chase', () => {
  test('ends where runner and ball are in one place, and not before', () => {
    fc.assert(
      fc.property(between(0.01, 10), between(0, 12), between(0.5, 2.5), between(1, 5), between(2, 9), (...drawn) => {
        const [gap, speed, deceleration, acceleration, topSpeed] = drawn
        const program: Program = { ...base, deceleration, acceleration, topSpeed }
        const ends = chaseSeconds(program, gap, speed)
        const ball = { releaseSpeed: metresPerSecond(speed), deceleration: metresPerSecondSquared(deceleration) }
        const ahead = (at: number) => {
          const ramp = topSpeed / acceleration
          const run = at <= ramp ? (acceleration * at * at) / 2 : topSpeed * at - (topSpeed * ramp) / 2
          return gap + rolledLength(ball, seconds(at)) - run
        }
        expect(Math.abs(ahead(ends))).toBeLessThan(1e-6 * (1 + ends))
        for (let share = 0; share < 1; share += 0.1) expect(ahead(ends * share * 0.999)).toBeGreaterThan(0)
      }),
      { numRuns: 1000 },
    )
  })
})

describe('a player', () => {
  const at = (x: number, y: number, seconds: number) => {
    const memory = makeMemory(base)
    addLeg(base, memory, 0, x, y, 1, base.topSpeed)
    addLeg(base, memory, 0, x, y + 30, 3, base.topSpeed)
    locate(base, memory, 0, seconds)
    return [memory.now[PLACE_X]!, memory.now[PLACE_Y]!]
  }

  test('stands, runs and turns off as their runs start, also when asked of a time before the last of them', () => {
    const [startX, startY] = [base.startX[0]!, base.startY[0]!]
    expect(at(startX + 30, startY, 0.5)).toEqual([startX, startY])
    // One second from rest: half the acceleration (U10: 2.8 m/s²), straight ahead.
    expect(at(startX + 30, startY, 2)[0]).toBeCloseTo(startX + 1.4, 9)
    expect(at(startX + 30, startY, 2)[1]).toBe(startY)
    expect(at(startX + 30, startY, 4)[1]).toBeGreaterThan(startY)
  })

  test('who waits takes a ball within their leg at once, and steps to another only once they have seen where it goes', () => {
    const memory = makeMemory(base)
    memory.now[STARTS_AT] = 5
    memory.now[REACTION] = 0.25
    memory.now[THERE_AT] = 2
    expect(readyAt(base, memory, base.reach)).toBe(2)
    // 0.35 m beyond the leg from rest at 2.8 m/s²: √(2 · 0.35/2.8) = 0.5 s.
    expect(readyAt(base, memory, base.reach + 0.35)).toBeCloseTo(5.75, 9)
    memory.now[THERE_AT] = 6
    expect(readyAt(base, memory, base.reach + 0.35)).toBeCloseTo(6.5, 9)
  })
})
