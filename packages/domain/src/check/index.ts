export * from './ball'
export type { BallFlight } from './ball-played'
export { CHECK_VERSION, type CheckOptions, checkPattern, type PatternCheck } from './check-pattern'
export * from './club-profiles'
export { type CoverLimits, DEFAULT_COVER_LIMITS } from './cover/cover-limits'
export { coverOf } from './cover/cover-of'
export type { CoverOptions } from './cover/cover-rules'
export * from './cover/look-cover'
export * from './edit-profile'
export * from './error-runs/compare-error-runs'
export * from './error-runs/error-profile'
export * from './error-runs/error-runner'
export {
  addErrorRuns,
  type ErrorRuns,
  errorRuns,
  NOT_A_FORECAST,
  playRuns,
  type StepRuns,
  standardErrorOf,
} from './error-runs/error-runs'
export { LOSS_CAUSES, type LossCause } from './error-runs/loss-causes'
export * from './lane'
export { ASKED_HABITS, type CheckLimits, DEFAULT_LIMITS } from './limits'
export * from './note'
export { BEHAVIOURS } from './pressure/behaviours'
export { BREAKS } from './pressure/press'
export * from './profiles'
export * from './remedy'
export { type CheckReport, type CheckReportOptions, checkReport, findNotFinite, type ToldPressure } from './report'
export * from './runner'
export * from './study'
export * from './surfaces'
export * from './team-reach'
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
