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
  const beside = Math.abs(opponent.off) < 1e-9 ? { ...opponent, off: metres(0) } : opponent
  const end = Math.min(length, stopDistance(ball))
  const start = Math.min(end, Math.max(0, beside.along, edgeOfReach(beside) ?? 0))
  const inner = firstZeroOfSlope(ball, beside, start, end)
  const atEnd = { margin: marginAt(ball, beside, end), at: metres(end) }
  if (inner === null) return atEnd
  const within = { margin: marginAt(ball, beside, inner), at: metres(inner) }
  return atEnd.margin < within.margin ? atEnd : within
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
  const { speed, reaction, reach } = opponent
  return rollingLaneMargin(ball, length, { along, off, speed, reaction, reach })
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
  const way = awayFrom(opponent, at) - opponent.reach
  return opponent.reaction + Math.max(0, way) / opponent.speed
}

/** How far the opponent stands from a place of the lane. On the lane itself no square may lose what is tiny. */
function awayFrom({ along, off }: LaneOpponent, at: number): number {
  return off === 0 ? Math.abs(at - along) : Math.sqrt((at - along) ** 2 + off ** 2)
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

/** Newton's steps double the digits each time; this many are never needed but where the zero is a double one. */
const STEPS_MAX = 60

/**
 * The first zero of the slope, by Newton's steps from the left: the tangent of a concave slope lies above it, so no step goes
 * past the zero. Null where the slope stays below zero: once it no longer rises it never will again.
 */
function firstZeroOfSlope(ball: RollingBall, opponent: LaneOpponent, start: number, end: number): number | null {
  let at = start
  for (let step = 0; step < STEPS_MAX; step += 1) {
    const away = awayFrom(opponent, at)
    const ballSpeed = rollingSpeed(ball, metres(at))
    const slope = (away === 0 ? 1 : (at - opponent.along) / away) / opponent.speed - 1 / ballSpeed
    if (slope >= 0) return at
    const turning = opponent.off === 0 ? 0 : opponent.off ** 2 / (opponent.speed * away ** 3)
    const bend = turning - ball.deceleration / ballSpeed ** 3
    if (bend <= 0) return null
    const next = at - slope / bend
    if (next > end) return null
    if (next <= at) break
    at = next
  }
  return at
}
