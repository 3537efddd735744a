import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { point } from '../geometry'
import { metres, metresPerSecond, metresPerSecondSquared, seconds } from '../quantities'
import { type RollingBall, rollingDuration } from './ball'
import { constantLaneMargin, type LaneOpponent, laneMarginBetween, rollingLaneMargin } from './lane'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const opponentArbitrary: fc.Arbitrary<LaneOpponent> = fc
  .record({
    along: number(-5, 30),
    off: number(0, 12),
    speed: number(2, 8),
    reaction: number(0.1, 0.8),
    reach: number(0, 1),
  })
  .map((each) => ({
    along: metres(each.along),
    off: metres(each.off),
    speed: metresPerSecond(each.speed),
    reaction: seconds(each.reaction),
    reach: metres(each.reach),
  }))

const ballArbitrary: fc.Arbitrary<RollingBall> = fc
  .record({ speed: number(3, 16), slowing: number(0.5, 2.5) })
  .map(({ speed, slowing }) => ({
    releaseSpeed: metresPerSecond(speed),
    deceleration: metresPerSecondSquared(slowing),
  }))

const lengthArbitrary = number(1, 30).map(metres)

/** The plain definition: how much later than the ball the opponent is at a place, tried at many places. */
function smallestOnGrid(length: number, opponent: LaneOpponent, ballTime: (at: number) => number | null): number {
  let least = Number.POSITIVE_INFINITY
  for (let index = 0; index <= 2000; index += 1) {
    const at = (length * index) / 2000
    const rolled = ballTime(at)
    if (rolled === null) break
    const way = Math.max(0, Math.hypot(at - opponent.along, opponent.off) - opponent.reach)
    least = Math.min(least, opponent.reaction + way / opponent.speed - rolled)
  }
  return least
}

describe('the smallest margin', { timeout: 60_000 }, () => {
  test('of a steady ball is never above, and hardly below, the smallest found place by place', () => {
    fc.assert(
      fc.property(number(3, 16), lengthArbitrary, opponentArbitrary, (speed, length, opponent) => {
        const found = constantLaneMargin(metresPerSecond(speed), length, opponent).margin
        const grid = smallestOnGrid(length, opponent, (at) => at / speed)
        expect(found).toBeLessThanOrEqual(grid + 1e-9)
        expect(found).toBeGreaterThan(grid - 0.02)
      }),
    )
  })

  test('of a ball that slows down likewise, also where it stops before the end', () => {
    fc.assert(
      fc.property(ballArbitrary, lengthArbitrary, opponentArbitrary, (ball, length, opponent) => {
        const found = rollingLaneMargin(ball, length, opponent).margin
        const grid = smallestOnGrid(length, opponent, (at) => rollingDuration(ball, metres(at)))
        expect(found).toBeLessThanOrEqual(grid + 1e-9)
        // A ball about to stop takes long over the last step of the grid.
        expect(found).toBeGreaterThan(grid - (rollingDuration(ball, length) === null ? 0.3 : 0.15))
      }),
      { numRuns: 300 },
    )
  })

  test('of a ball that hardly slows down is that of a steady ball', () => {
    fc.assert(
      fc.property(number(5, 16), lengthArbitrary, opponentArbitrary, (speed, length, opponent) => {
        const ball = { releaseSpeed: metresPerSecond(speed), deceleration: metresPerSecondSquared(1e-9) }
        const steady = constantLaneMargin(ball.releaseSpeed, length, opponent).margin
        expect(rollingLaneMargin(ball, length, opponent).margin).toBeCloseTo(steady, 6)
      }),
    )
  })

  test('is right for an opponent on the way itself (found by the test above)', () => {
    const ball = { releaseSpeed: metresPerSecond(3), deceleration: metresPerSecondSquared(0.5) }
    const onIt = { along: metres(0), speed: metresPerSecond(2), reaction: seconds(0.1), reach: metres(0) }
    for (const off of [0, 5e-324, 1e-12, 1e-6]) {
      expect(rollingLaneMargin(ball, metres(1), { ...onIt, off: metres(off) }).margin).toBeCloseTo(0.1, 5)
    }
  })

  test('of a pass that ends within the leg of an opponent is their reaction less the time of the ball, not better', () => {
    const beside = {
      along: metres(10),
      off: metres(0.2),
      speed: metresPerSecond(5),
      reaction: seconds(0.3),
      reach: metres(0.8),
    }
    const ball = { releaseSpeed: metresPerSecond(10), deceleration: metresPerSecondSquared(0.8) }
    expect(constantLaneMargin(ball.releaseSpeed, metres(10), beside).margin).toBeCloseTo(0.3 - 1, 12)
    const rolled = rollingDuration(ball, metres(10))!
    expect(rollingLaneMargin(ball, metres(10), beside).margin).toBeCloseTo(0.3 - rolled, 12)
  })

  test('never falls when the opponent reacts later, runs slower or reaches less', () => {
    fc.assert(
      fc.property(ballArbitrary, lengthArbitrary, opponentArbitrary, number(0, 0.5), (ball, length, opponent, more) => {
        const before = rollingLaneMargin(ball, length, opponent).margin
        const weaker: LaneOpponent[] = [
          { ...opponent, reaction: seconds(opponent.reaction + more) },
          { ...opponent, speed: metresPerSecond(opponent.speed - more) },
          { ...opponent, reach: metres(Math.max(0, opponent.reach - more)) },
        ]
        for (const each of weaker) {
          expect(rollingLaneMargin(ball, length, each).margin).toBeGreaterThanOrEqual(before - 1e-9)
        }
      }),
    )
  })

  test('never rises when the ball is played slower', () => {
    fc.assert(
      fc.property(ballArbitrary, lengthArbitrary, opponentArbitrary, number(0, 2), (ball, length, opponent, less) => {
        fc.pre(rollingDuration(ball, length) !== null)
        const slower = { ...ball, releaseSpeed: metresPerSecond(Math.max(0.5, ball.releaseSpeed - less)) }
        fc.pre(rollingDuration(slower, length) !== null)
        const margin = rollingLaneMargin(ball, length, opponent).margin
        expect(rollingLaneMargin(slower, length, opponent).margin).toBeLessThanOrEqual(margin + 1e-9)
      }),
    )
  })

  test('stays when everything is moved, turned or mirrored together', () => {
    const placed = fc.record({ x: number(-20, 20), y: number(-20, 20) })
    fc.assert(
      fc.property(ballArbitrary, placed, placed, placed, placed, number(0, 6.28), (ball, from, to, at, shift, turn) => {
        const opponent = {
          speed: metresPerSecond(5),
          reaction: seconds(0.3),
          reach: metres(0.5),
        }
        fc.pre(Math.hypot(to.x - from.x, to.y - from.y) > 0.1)
        const plain = (place: { x: number; y: number }) => point(place.x, place.y)
        const moved = (place: { x: number; y: number }) =>
          point(
            place.x * Math.cos(turn) - place.y * Math.sin(turn) + shift.x,
            place.x * Math.sin(turn) + place.y * Math.cos(turn) + shift.y,
          )
        const mirrored = (place: { x: number; y: number }) => point(place.x, -place.y)
        const margin = (map: typeof plain) =>
          laneMarginBetween(map(from), map(to), ball, { ...opponent, at: map(at) }).margin
        expect(margin(moved)).toBeCloseTo(margin(plain), 6)
        expect(margin(mirrored)).toBe(margin(plain))
      }),
    )
  })
})
