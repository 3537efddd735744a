import type { Point } from '../../geometry'
import type { Position } from '../../pattern'
import type { Seconds, SourceKind } from '../../quantities'

/** How many X a look is covered against. */
export const X_COUNTS = [1, 2, 3] as const
export type XCount = (typeof X_COUNTS)[number]

/** What the check knows of one look: what can be played, from where it is open, and where it is not. */
export type LookCover = {
  readonly lookId: string
  readonly stepId: string
  readonly by: Position
  /** What the player can do, in the order it is tried: the answers, the ball as drawn, the exit. */
  readonly ways: readonly CoverWay[]
  /** Every place where one X may stand, with what is then taken: an index into `ways`, or null for a hole. */
  readonly places: readonly CoverPlace[]
  /** For one, two and three X. */
  readonly counts: readonly XCover[]
  readonly notes: readonly SignNote[]
}

export type CoverWay = {
  /** A, B, C … as in the script and on the drawing; null for the ball as drawn. */
  readonly letter: string | null
  readonly stepIds: readonly string[]
  /** From the moment the ball before is played until this way's first ball; null at the restart, which can wait. */
  readonly signSeconds: Seconds | null
  /** False where a ball of it stops short of its receiver: no X is needed to shut it. */
  readonly arrives: boolean
}

export type CoverPlace = { readonly at: Point; readonly way: number | null }

/** Whole numbers of placements: sets of so many X on different places of the grid. */
export type XCover = {
  readonly opponents: XCount
  readonly placements: number
  /** Placements in which something is open. */
  readonly open: number
  /** `open` of `placements` in whole per mille, rounded down; null where so many X have no room. */
  readonly perMille: number | null
  /** By way, in the order of `ways`. */
  readonly ways: readonly WayCover[]
  /** At most three, the largest first. */
  readonly holes: readonly Hole[]
  readonly sentence: string
}

export type WayCover = {
  /** Placements in which this way is the one taken. */
  readonly taken: number
  /** Placements in which all its balls get through, whether its sign shows or not. */
  readonly lanesOpen: number
}

export type Hole = {
  /** Where X stand; with X at these places and none elsewhere nothing is open. May be fewer than the X counted. */
  readonly at: readonly Point[]
  /** As "X between CM and RCB". */
  readonly words: string
}

/** The sign is in sight for too short a time before the ball is played. */
export type SignNote = {
  readonly code: 'sign-too-short'
  readonly severity: 'note'
  readonly stepId: string
  readonly position: Position
  readonly value: number
  readonly limit: number
  readonly unit: 's'
  readonly sourceKind: SourceKind
  readonly source: string
  readonly sentence: string
}
