import type { Metres, MetresPerSecond, MetresPerSecondSquared, Seconds } from '../quantities'
import { assert, metres, metresPerSecond, metresPerSecondSquared, seconds } from '../quantities'

/** Standard acceleration of free fall as practice rounds it. */
export const GRAVITY: MetresPerSecondSquared = metresPerSecondSquared(9.81)

/** A ball on the ground: it loses speed steadily until it stands. Straight and without spin. */
export type RollingBall = { readonly releaseSpeed: MetresPerSecond; readonly deceleration: MetresPerSecondSquared }

/**
 * Deceleration implied by a ball-roll test: a thin shell rolls off a ramp of this height with √(1.2·g·h), so a = 0.6·g·h/d.
 * An upper bound: what the ramp costs is ignored.
 */
export function decelerationFromRoll(rampHeight: Metres, rollOut: Metres): MetresPerSecondSquared {
  assert(rollOut > 0, 'a ball-roll distance must be positive')
  return metresPerSecondSquared((0.6 * GRAVITY * rampHeight) / rollOut)
}

/** Where the ball would stand still: v²/2a. */
export function stopDistance(ball: RollingBall): Metres {
  return metres(ball.releaseSpeed ** 2 / (2 * ball.deceleration))
}

/** Speed after this length, zero where it has stopped before. */
export function rollingSpeed(ball: RollingBall, length: Metres): MetresPerSecond {
  return metresPerSecond(Math.sqrt(Math.max(0, ball.releaseSpeed ** 2 - 2 * ball.deceleration * length)))
}

/** Time to roll this length, or null where the ball stops before it: t = (v₀ − √(v₀² − 2ad))/a. */
export function rollingDuration(ball: RollingBall, length: Metres): Seconds | null {
  const squared = ball.releaseSpeed ** 2 - 2 * ball.deceleration * length
  // A ball struck to stop exactly there does arrive; rounding must not lose it.
  if (squared < -1e-9) return null
  // The same formula multiplied out: it keeps its digits where length or deceleration is small.
  const sum = ball.releaseSpeed + Math.sqrt(Math.max(0, squared))
  return sum === 0 ? seconds(0) : seconds((2 * length) / sum)
}

/** How far the ball has rolled after this time; it stays where it stops. */
export function rolledLength(ball: RollingBall, elapsed: Seconds): Metres {
  const moving = Math.min(Math.max(0, elapsed), ball.releaseSpeed / ball.deceleration)
  return metres(ball.releaseSpeed * moving - (ball.deceleration * moving * moving) / 2)
}

/** Release speed for a wanted arrival speed: v₀ = √(v² + 2ad). */
export function releaseSpeedFor(
  arrival: MetresPerSecond,
  length: Metres,
  deceleration: MetresPerSecondSquared,
): MetresPerSecond {
  return metresPerSecond(Math.sqrt(arrival ** 2 + 2 * deceleration * length))
}

/**
 * A ball in the air, as simply as can be stated: struck at 45°, no drag, no spin, landing where it is met. 45° needs the
 * least speed for a length, √(g·d), and takes √(2d/g); the real flight of a child's lofted pass is a little lower and longer.
 */
export function flightDuration(length: Metres): Seconds {
  return seconds(Math.sqrt((2 * length) / GRAVITY))
}

export function flightReleaseSpeed(length: Metres): MetresPerSecond {
  return metresPerSecond(Math.sqrt(GRAVITY * length))
}

/** The longest such flight a release speed allows: v²/g. */
export function flightReach(releaseSpeed: MetresPerSecond): Metres {
  return metres(releaseSpeed ** 2 / GRAVITY)
}
