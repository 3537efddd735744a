import { habit, type Metres, metres, type Seconds, type Sourced, seconds } from '../quantities'

/** What measured values are held against; a club may set its own, which then say so by their source kind. */
export type CheckLimits = {
  /** How late a receiver may be before anything is said. */
  readonly lateSeconds: Sourced<Seconds>
  /** An answer or a lane counts as open from this margin on. */
  readonly laneMarginSeconds: Sourced<Seconds>
  /** Two players nearer than this stand in one place. */
  readonly placeMetres: Sourced<Metres>
  /** A pole stands for a body: a ball passing nearer than this would meet it. */
  readonly poleMetres: Sourced<Metres>
  /** A ball passing a cone nearer than this touches it. */
  readonly coneMetres: Sourced<Metres>
  /** A ball that ends this much short is still met with a step. */
  readonly shortMetres: Sourced<Metres>
  /** The taker of a throw-in may stand this far outside the line. */
  readonly throwInMetres: Sourced<Metres>
}

export const DEFAULT_LIMITS: CheckLimits = {
  lateSeconds: habit(seconds(0.3)),
  laneMarginSeconds: habit(seconds(0.3)),
  placeMetres: habit(metres(1)),
  poleMetres: habit(metres(0.5)),
  coneMetres: habit(metres(0.2)),
  shortMetres: habit(metres(1)),
  throwInMetres: habit(metres(1)),
}
