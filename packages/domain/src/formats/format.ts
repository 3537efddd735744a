import type { Millimetres, Sourced } from '../quantities'

/** The closed list of formats this edition knows; a club's own and other bodies' formats join it with their issue. */
export const FORMAT_IDS = ['ifab-11v11', 'us-9v9', 'us-7v7'] as const
export type FormatId = (typeof FORMAT_IDS)[number]

export type Range = { readonly minMm: Millimetres; readonly maxMm: Millimetres }

/** The marked areas of one end, measured as the laws do: depth up the pitch, width across it. */
export type MarkedArea = { readonly depthMm: Millimetres; readonly widthMm: Millimetres }

/** Inside measures, between the posts and under the bar; some bodies give one size, some the largest allowed. */
export type GoalSize = {
  readonly widthMm: Millimetres
  readonly heightMm: Millimetres
  readonly meaning: 'exact' | 'maximum'
}

/** Where sources disagree or say nothing: shown beside the number, so that nobody takes it for settled. */
export type FormatDoubt = { readonly about: string; readonly sentence: string }

/** A club's own choices where sources conflict; the club's settings fit this shape. */
export type FormatChoices = {
  /** U.S. 7v7: two sizes of the penalty mark's distance are in use. */
  readonly penaltyMarkYards7v7: 8 | 10
  /** U.S. 7v7: when opponents may cross the build-out line after the goalkeeper releases the ball from the hands. */
  readonly buildOutCrossing7v7?: BuildOutCrossing
}

/**
 * Once the goalkeeper has released the ball, or only once a team-mate has touched it. At a goal kick no source doubts that
 * they may cross as soon as the ball is in play.
 */
export type BuildOutCrossing = 'released' | 'touched'

/** What a governing body prescribes for one game, every number with its source; null where the game has no such thing. */
export type Format = {
  readonly formatId: FormatId
  readonly name: string
  readonly issuer: string
  readonly edition: string
  readonly ageGroups: Sourced<readonly string[]>
  /** On the field, the goalkeeper counted. */
  readonly playersPerSide: Sourced<number>
  readonly goalkeeper: Sourced<boolean>
  readonly lengthMm: Sourced<Range>
  readonly widthMm: Sourced<Range>
  /** The size drawn when no space is chosen: inside the range, by habit or by the body's recommendation. */
  readonly nominal: Sourced<{ readonly lengthMm: Millimetres; readonly widthMm: Millimetres }>
  readonly goal: Sourced<GoalSize>
  readonly goalArea: Sourced<MarkedArea> | null
  readonly penaltyArea: Sourced<MarkedArea> | null
  /** From the middle of the goal line. */
  readonly penaltyMarkMm: Sourced<Millimetres> | null
  /** Radius of the centre circle and of the arc round the penalty mark. */
  readonly circleRadiusMm: Sourced<Millimetres> | null
  readonly cornerArcRadiusMm: Sourced<Millimetres> | null
  /** Present where the format plays with a build-out line midway between penalty area and halfway line. */
  readonly buildOutLine: Sourced<'midway'> | null
  /** When opponents may cross that line after a release from the goalkeeper's hands. */
  readonly buildOutCrossing: Sourced<BuildOutCrossing> | null
  /** Where opponents wait at a goal kick, apart from the build-out line. */
  readonly retreatLine: Sourced<'penalty-area' | 'halfway' | 'third'>
  readonly offsideFrom: Sourced<'halfway' | 'build-out-line' | 'nowhere'>
  /** Opponents keep at least this far from a free kick until it is in play. */
  readonly restartDistanceMm: Sourced<Millimetres>
  /** May the goalkeeper punt or drop-kick the ball? */
  readonly punting: Sourced<boolean>
  /** May every child of the format's age groups head the ball in a match? A caution, not medical advice; local rules decide. */
  readonly headingAllowed: Sourced<boolean>
  /** Outfield lines from the back, as "2-3-1". */
  readonly formations: Sourced<readonly string[]>
  readonly doubts: readonly FormatDoubt[]
}
