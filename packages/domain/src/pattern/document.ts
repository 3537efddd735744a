import type { FormatId } from '../formats'
import type { Side, Spot } from '../pitch'
import type { Millimetres } from '../quantities'

/** The document version written today; every version ever saved still opens (see versions.ts). */
export const PATTERN_DOCUMENT_VERSION = 1

/** A place in a formation: GK, LCB, CM, RW … The club may show its own word; the code is the same everywhere. */
export type Position = string

/**
 * A pattern from restart to finish. Lengths are whole millimetres; the drawing and the script are two views of this.
 * It is written for one side and mirrored on request (`writtenFor`); feet never mirror.
 */
export type PatternDocument = {
  readonly v: typeof PATTERN_DOCUMENT_VERSION
  readonly title: string
  /** The problem it answers, as a TD would say it: "they press with two". */
  readonly problem: string
  readonly formatId: FormatId
  /** As "2-3-1": outfield lines from the back; must add up to the format's players less the goalkeeper. */
  readonly formation: string
  readonly ageGroup: string
  readonly writtenFor: Side
  /** Own players with their starting places. */
  readonly positions: readonly PlacedPosition[]
  /** Where the same players stand once the ball is theirs, and after it is lost; may be empty. */
  readonly inPossession: readonly PlacedPosition[]
  readonly onLoss: readonly PlacedPosition[]
  /** Live opponents or poles where the pattern is drawn against them. */
  readonly obstacles: readonly Obstacle[]
  readonly targets: readonly Target[]
  readonly restart: Restart
  readonly steps: readonly Step[]
  readonly looks: readonly Look[]
  readonly teaching: Teaching
}

export type PlacedPosition = { readonly position: Position; readonly spot: Spot }

export const OBSTACLE_KINDS = ['cone', 'pole', 'opponent'] as const
export type Obstacle = {
  readonly obstacleId: string
  readonly kind: (typeof OBSTACLE_KINDS)[number]
  readonly spot: Spot
}

export const TARGET_KINDS = ['goal', 'small-goal', 'gate'] as const
export type Target = {
  readonly targetId: string
  readonly kind: (typeof TARGET_KINDS)[number]
  readonly spot: Spot
  readonly widthMm: Millimetres
}

export const RESTARTS = ['goal-kick', 'goalkeeper-hands', 'free-kick', 'throw-in', 'open-play'] as const
export type Restart = (typeof RESTARTS)[number]

/** One ball action and the runs made while it happens. */
export type Step = {
  readonly stepId: string
  readonly action: BallAction
  readonly runs: readonly Run[]
  /** Spoken by the coach at this step: at most six words; empty where there is nothing to say. */
  readonly point: string
}

export type Foot = 'near' | 'far' | 'either'
export type Touches = 1 | 2

/** Receiving to feet happens where the receiver is; into space happens at `to`. */
export type BallAction =
  | {
      readonly kind: 'pass'
      readonly from: Position
      readonly to: Position
      readonly into: { readonly kind: 'feet' } | { readonly kind: 'space'; readonly spot: Spot }
      readonly height: 'ground' | 'air'
      readonly touches: Touches
      readonly foot: Foot
    }
  | {
      readonly kind: 'set-back'
      readonly from: Position
      readonly to: Position
      readonly into: { readonly kind: 'feet' } | { readonly kind: 'space'; readonly spot: Spot }
      readonly foot: Foot
    }
  | { readonly kind: 'carry'; readonly by: Position; readonly to: Spot; readonly at: string | null }
  | { readonly kind: 'dribble-past'; readonly by: Position; readonly to: Spot; readonly past: string }
  | {
      readonly kind: 'throw' | 'roll'
      readonly from: Position
      readonly to: Position
      readonly into: { readonly kind: 'feet' } | { readonly kind: 'space'; readonly spot: Spot }
    }
  | { readonly kind: 'dummy'; readonly by: Position; readonly to: Position }
  | { readonly kind: 'shot'; readonly by: Position; readonly target: string }

export const RUN_STARTS = ['before-the-ball', 'with-the-ball', 'after-the-ball'] as const
export type Run = {
  readonly position: Position
  readonly to: Spot
  /** Before: as the step before is played; with: as this ball is played; after: when this ball arrives. */
  readonly start: (typeof RUN_STARTS)[number]
}

/** A sign the player on the ball can see, with ordered answers; the first open one wins, the last is the exit. */
export type Look = {
  readonly lookId: string
  /** The step before whose ball action the player looks. */
  readonly stepId: string
  readonly by: Position
  readonly answers: readonly Answer[]
}

export const SIGNS = [
  'presser-from-inside',
  'presser-from-outside',
  'presser-comes-at',
  'presser-stays-off',
  'lane-shut',
  'two-on-one',
  'all-shut',
] as const
export type Answer = {
  readonly sign: (typeof SIGNS)[number]
  /** The position the sign speaks of, where the sign needs one. */
  readonly about: Position | null
  readonly steps: readonly Step[]
  /** Where the answer goes on: the trunk's step, or the end of the pattern. */
  readonly rejoins: string | 'exit'
}

/** Teaching content. Coaching points are at most six words; "published" needs every field but the lists of words. */
export type Teaching = {
  readonly why: string
  readonly good: string
  readonly mistakes: readonly { readonly seen: string; readonly change: string }[]
  readonly question: string
  readonly easier: string
  readonly harder: string
  readonly callWords: readonly string[]
  /** When it is time to go long, over the press. */
  readonly goLong: string
}
