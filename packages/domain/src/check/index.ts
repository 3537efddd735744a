export * from './ball'
export type { BallFlight } from './ball-played'
export { CHECK_VERSION, type CheckOptions, checkPattern, type PatternCheck } from './check-pattern'
export * from './lane'
export { type CheckLimits, DEFAULT_LIMITS } from './limits'
export * from './note'
export * from './profiles'
export * from './remedy'
export * from './runner'
export * from './surfaces'
export type { TimedStep } from './timed-step'
export {
  ballAt,
  type PlacedBall,
  type PlacedPlayer,
  playerAt,
  playersAt,
  type Timeline,
  timelineOf,
} from './timeline'
export type { Leg, Track } from './tracks'
