import type { Metres, MetresPerSecond, MetresPerSecondSquared, Seconds } from '../quantities'
import { metres, metresPerSecond, seconds } from '../quantities'
import {
  flightDuration,
  flightReach,
  GRAVITY,
  type RollingBall,
  releaseSpeedFor,
  rolledLength,
  rollingDuration,
  rollingSpeed,
  stopDistance,
} from './ball'

/** How the ball gets from one place to the next. */
export type BallFlight =
  | { readonly kind: 'rolls'; readonly ball: RollingBall }
  | { readonly kind: 'flies'; readonly duration: Seconds }
  | { readonly kind: 'carried' }

export type BallPlayed = {
  readonly flight: BallFlight
  readonly duration: Seconds
  /** What is missing of the way because the kick cannot be harder; zero where the ball arrives. */
  readonly shortBy: Metres
}

/** A ball rolled so that it arrives at the wanted speed, or as hard as the player can. */
export function rollBall(
  length: Metres,
  wantedArrival: MetresPerSecond,
  speedMax: MetresPerSecond,
  deceleration: MetresPerSecondSquared,
): BallPlayed {
  const wanted = releaseSpeedFor(wantedArrival, length, deceleration)
  return rollOn({ releaseSpeed: metresPerSecond(Math.min(wanted, speedMax)), deceleration }, length)
}

/** A ball that rolls on with the speed it has. */
export function rollOn(ball: RollingBall, length: Metres): BallPlayed {
  const duration = rollingDuration(ball, length)
  if (duration !== null) return { flight: { kind: 'rolls', ball }, duration, shortBy: metres(0) }
  return {
    flight: { kind: 'rolls', ball },
    duration: seconds(ball.releaseSpeed / ball.deceleration),
    shortBy: metres(length - stopDistance(ball)),
  }
}

/** A ball through the air to where it is met, or as far as the player can. */
export function flyBall(length: Metres, speedMax: MetresPerSecond): BallPlayed {
  const reached = metres(Math.min(length, flightReach(speedMax)))
  const duration = flightDuration(reached)
  return { flight: { kind: 'flies', duration }, duration, shortBy: metres(length - reached) }
}

/** Speed along the ground with which a played ball comes in. */
export function incomingSpeed(flight: BallFlight, length: Metres): MetresPerSecond {
  switch (flight.kind) {
    case 'rolls':
      return rollingSpeed(flight.ball, length)
    case 'flies':
      return metresPerSecond(Math.sqrt((GRAVITY * length) / 2))
    case 'carried':
      return metresPerSecond(0)
  }
}

/** Share of its way a ball has made after this time, 0 to 1. A carried ball goes with its player instead. */
export function shareTravelled(flight: BallFlight, length: Metres, elapsed: Seconds): number {
  if (length === 0 || flight.kind === 'carried') return 1
  const share = flight.kind === 'rolls' ? rolledLength(flight.ball, elapsed) / length : elapsed / flight.duration
  return Math.min(1, Math.max(0, share))
}
