import { habit, type Metres, metres, type Seconds, type Sourced, seconds } from '../../quantities'

/** What a child sees of X and in what time; a club may set its own, which then say so by their source kind. */
export type CoverLimits = {
  /** The X nearest to the player on the ball presses them when nearer than this. */
  readonly pressMetres: Sourced<Metres>
  /** A presser less than this to one side of the player on the ball comes straight on, from neither side. */
  readonly straightMetres: Sourced<Metres>
  /** A player on the ball this near the middle of the pitch has no inside and no outside. */
  readonly middleMetres: Sourced<Metres>
  /** An X who can be at a player within this time goes to them. */
  readonly comesAtSeconds: Sourced<Seconds>
  /** Two on one needs a team-mate within this distance. */
  readonly supportMetres: Sourced<Metres>
  /** How long a sign has to be in sight before the ball is played. */
  readonly signSeconds: Sourced<Seconds>
}

export const DEFAULT_COVER_LIMITS: CoverLimits = {
  pressMetres: habit(metres(6)),
  straightMetres: habit(metres(0.5)),
  middleMetres: habit(metres(2)),
  comesAtSeconds: habit(seconds(1)),
  supportMetres: habit(metres(10)),
  signSeconds: habit(seconds(1)),
}
