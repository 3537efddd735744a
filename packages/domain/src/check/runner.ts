import type { Metres, MetresPerSecond, MetresPerSecondSquared, Seconds } from '../quantities'
import { metres, seconds } from '../quantities'

/** A player from rest: constant acceleration up to a top speed, then that speed. Stopping costs nothing. */
export type Runner = { readonly acceleration: MetresPerSecondSquared; readonly topSpeed: MetresPerSecond }

/** Time to run a length from rest: √(2D/A) while D ≤ v²/2A, else D/v + v/2A. */
export function runDuration(runner: Runner, length: Metres): Seconds {
  const { acceleration, topSpeed } = runner
  const rampLength = topSpeed ** 2 / (2 * acceleration)
  return length <= rampLength
    ? seconds(Math.sqrt((2 * length) / acceleration))
    : seconds(length / topSpeed + topSpeed / (2 * acceleration))
}

/** Length run from rest after this time: the inverse of `runDuration`. */
export function runLength(runner: Runner, elapsed: Seconds): Metres {
  const { acceleration, topSpeed } = runner
  const time = Math.max(0, elapsed)
  const rampDuration = topSpeed / acceleration
  return time <= rampDuration
    ? metres((acceleration * time * time) / 2)
    : metres(topSpeed * time - (topSpeed * topSpeed) / (2 * acceleration))
}
