import { distance, type Point } from '../geometry'
import type { Metres, MetresPerSecond, Seconds } from '../quantities'
import { metres, seconds } from '../quantities'
import type { RollingBall } from './ball'
import { rollingDuration, rollingSpeed, stopDistance } from './ball'

/** An opponent at rest beside a lane. `along` and `off` are measured from the passer, along the ball's way and off it. */
export type LaneOpponent = {
  readonly along: Metres
  readonly off: Metres
  readonly speed: MetresPerSecond
  readonly reaction: Seconds
  /** How far a leg reaches without a step. */
  readonly reach: Metres
}

/** The tightest place of a lane: how much later than the ball the opponent gets there. Closed at zero or less. */
export type LaneMargin = { readonly margin: Seconds; readonly at: Metres }

/**
 * Smallest margin over the whole lane for a ball of constant speed, in closed form: with ρ = vd/vb the tightest place is
 * x + yρ/√(1−ρ²), clamped to the lane; a lane is tight beyond the foot of the perpendicular, never before it.
 * An opponent as fast as the ball or faster gains all along it, so the end of the lane is tightest.
 */
export function constantLaneMargin(ballSpeed: MetresPerSecond, length: Metres, opponent: LaneOpponent): LaneMargin {
  const off = Math.abs(opponent.off)
  const ratio = opponent.speed / ballSpeed
  const free = ratio < 1 ? opponent.along + (off * ratio) / Math.sqrt(1 - ratio * ratio) : length
  const inside = edgeOfReach(opponent)
  // Within reach the opponent only has to react: the ball is safest just before it is past the leg.
  const at = Math.min(length, Math.max(0, inside === null ? free : Math.max(free, inside)))
  return { margin: seconds(arrivalAt(opponent, at) - at / ballSpeed), at: metres(at) }
}

/**
 * The same for a ball that slows down, exact to rounding. Before the foot of the perpendicular (or the far edge of the
 * reach) the margin only falls; behind it its slope is a concave function of place, so the margin has at most one inner
 * minimum: the slope's first zero. The other candidate is the end of the lane, where a slow ball may be caught up with.
 */
export function rollingLaneMargin(ball: RollingBall, length: Metres, opponent: LaneOpponent): LaneMargin {
  // On the lane itself the slope jumps at the opponent; a nanometre off it the jump would only drown in rounding.
  const off = Math.abs(opponent.off)
  const beside = { ...opponent, off: metres(off < 1e-9 ? 0 : off) }
  const end = Math.min(length, stopDistance(ball))
  const start = Math.min(end, Math.max(0, beside.along, edgeOfReach(beside) ?? 0))
  const inner = firstZeroOfSlope(ball, beside, start, end)
  const candidates = inner === null ? [end] : [inner, end]
  const margins = candidates.map((at) => ({ margin: marginAt(ball, beside, at), at: metres(at) }))
  return margins.reduce((least, each) => (each.margin < least.margin ? each : least))
}

/** Margin of an opponent at rest against a rolling pass from one place to another. */
export function laneMarginBetween(
  from: Point,
  to: Point,
  ball: RollingBall,
  opponent: { readonly at: Point } & Omit<LaneOpponent, 'along' | 'off'>,
): LaneMargin {
  const length = distance(from, to)
  const { along, off } = measureFromLane(from, to, opponent.at)
  return rollingLaneMargin(ball, length, { ...opponent, along, off })
}

/** Where a place lies seen from a lane: along it (also before and beyond) and off it. */
export function measureFromLane(
  from: Point,
  to: Point,
  place: Point,
): { readonly along: Metres; readonly off: Metres } {
  const length = distance(from, to)
  if (length === 0) return { along: metres(0), off: distance(from, place) }
  const ux = (to.x - from.x) / length
  const uy = (to.y - from.y) / length
  const dx = place.x - from.x
  const dy = place.y - from.y
  return { along: metres(dx * ux + dy * uy), off: metres(Math.abs(dx * uy - dy * ux)) }
}

function arrivalAt(opponent: LaneOpponent, at: number): number {
  const way = Math.hypot(at - opponent.along, opponent.off) - opponent.reach
  return opponent.reaction + Math.max(0, way) / opponent.speed
}

function marginAt(ball: RollingBall, opponent: LaneOpponent, at: number): Seconds {
  const rolled = rollingDuration(ball, metres(at)) ?? ball.releaseSpeed / ball.deceleration
  return seconds(arrivalAt(opponent, at) - rolled)
}

/** The far edge of the lane within the opponent's reach, or null where the lane runs outside it. */
function edgeOfReach(opponent: LaneOpponent): number | null {
  const squared = opponent.reach ** 2 - opponent.off ** 2
  return squared < 0 ? null : opponent.along + Math.sqrt(squared)
}

function firstZeroOfSlope(ball: RollingBall, opponent: LaneOpponent, start: number, end: number): number | null {
  const slope = (at: number) => {
    const away = Math.hypot(at - opponent.along, opponent.off)
    const towards = away === 0 ? 1 : (at - opponent.along) / away
    return towards / opponent.speed - 1 / rollingSpeed(ball, metres(at))
  }
  const bend = (at: number) => {
    const away = Math.hypot(at - opponent.along, opponent.off)
    const turning = away === 0 ? 0 : opponent.off ** 2 / (opponent.speed * away ** 3)
    return turning - ball.deceleration / rollingSpeed(ball, metres(at)) ** 3
  }
  if (slope(start) >= 0) return start
  // The slope rises while it bends up; its highest place parts the first zero from the second.
  const top = bend(start) <= 0 ? start : lastWhere(bend, start, end)
  return slope(top) <= 0 ? null : lastWhere((at) => -slope(at), start, top)
}

/** The place where a quantity that is positive at `low` turns, by halving to the last bit. */
function lastWhere(quantity: (at: number) => number, low: number, high: number): number {
  if (quantity(high) > 0) return high
  let positive = low
  let other = high
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (positive + other) / 2
    if (quantity(middle) > 0) positive = middle
    else other = middle
  }
  return positive
}
