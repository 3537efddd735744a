import { habit, type Metres, metres, published, type Seconds, type Sourced, seconds } from '../quantities'

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
  /** How near a thrower an opponent may stand. */
  readonly throwInDistanceMetres: Sourced<Metres>
  /** How long a goalkeeper may hold the ball in the hands. */
  readonly holdSeconds: Sourced<Seconds>
  /** Nearer than this to the line from ball to receiver, an opponent hides the one from the other. */
  readonly shadowMetres: Sourced<Metres>
  /** The widest angle between where the ball comes from and where it goes next that a child sees at once, in degrees. */
  readonly viewDegrees: Sourced<number>
  /** An opponent nearer than this leaves no time to turn with the ball. */
  readonly turnRoomMetres: Sourced<Metres>
  /** A team-mate who stands nearer than this to the ball is marked by the same opponent. */
  readonly supportNearMetres: Sourced<Metres>
  /** How many outfield players stay behind the ball. */
  readonly stayBehindPlayers: Sourced<number>
  /** From this share of the whole pitch on somebody has to stay behind the ball. */
  readonly stayBehindShare: Sourced<number>
  /** A player carrying at an opponent passes on at least this far from them … */
  readonly releaseNearMetres: Sourced<Metres>
  /** … and at most this far, or the opponent need not come. */
  readonly releaseFarMetres: Sourced<Metres>
  /** Whoever starts further than this from the middle of the pitch belongs to that side. */
  readonly sideMetres: Sourced<Metres>
  /** How far past the middle a player of the weak side may come; null while nobody asks. */
  readonly weakSideMetres: Sourced<Metres> | null
  /** How far off the line of the pass before the striker receives, in degrees; null while nobody asks. */
  readonly strikerOffDegrees: Sourced<number> | null
}

const HOLD =
  'IFAB Laws of the Game 2025/26, Law 12: eight seconds in the hands, then a corner kick; local rules may differ'
const THROW_IN: Sourced<Metres> = {
  value: metres(2),
  kind: 'memory',
  source: 'IFAB Laws of the Game, Law 15 The Throw-in: opponents two metres away; not checked against the text',
}

export const DEFAULT_LIMITS: CheckLimits = {
  lateSeconds: habit(seconds(0.3)),
  laneMarginSeconds: habit(seconds(0.3)),
  placeMetres: habit(metres(1)),
  poleMetres: habit(metres(0.5)),
  coneMetres: habit(metres(0.2)),
  shortMetres: habit(metres(1)),
  throwInMetres: habit(metres(1)),
  throwInDistanceMetres: THROW_IN,
  holdSeconds: published(seconds(8), HOLD),
  shadowMetres: habit(metres(1)),
  viewDegrees: habit(135),
  turnRoomMetres: habit(metres(4)),
  supportNearMetres: habit(metres(3)),
  stayBehindPlayers: habit(1),
  stayBehindShare: habit(1 / 3),
  releaseNearMetres: habit(metres(1.5)),
  releaseFarMetres: habit(metres(4)),
  sideMetres: habit(metres(3)),
  weakSideMetres: null,
  strikerOffDegrees: null,
}

/** What a TD may ask for besides: habits many coaches teach and others do not, so they are off until somebody wants them. */
export const ASKED_HABITS = {
  weakSideMetres: habit(metres(0)),
  strikerOffDegrees: habit(45),
} as const satisfies Partial<CheckLimits>
