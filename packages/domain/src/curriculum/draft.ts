import type { ClubProfiles } from '../check'
import type { FormatId } from '../formats'
import type { PatternDocument } from '../pattern'
import type { Minutes } from '../quantities'

/** None, poles, shadow (walking defender), then one to six live opponents: the rungs of the ladder in order. */
export const PRESSURES = ['none', 'poles', 'shadow', 'x1', 'x2', 'x3', 'x4', 'x5', 'x6'] as const
export type Pressure = (typeof PRESSURES)[number]

/** A pattern, or its first steps, under a pressure. A stage keeps its id in every version. */
export type Stage = {
  readonly stageId: string
  readonly title: string
  readonly patternId: string
  readonly form: { readonly kind: 'full' } | { readonly kind: 'first-steps'; readonly steps: number }
  readonly pressure: Pressure
  /** Rules of the practice, as the coach reads them. */
  readonly conditions: readonly string[]
}

export type Progression = {
  readonly progressionId: string
  readonly title: string
  readonly stages: readonly Stage[]
  /** Progressions that come first. */
  readonly after: readonly string[]
}

export const ACTIVITY_KINDS = [
  'small-sided-game',
  'rondo',
  'keep-ball',
  'pattern',
  'build-out-game',
  'conditioned-game',
] as const
export type ActivityKind = (typeof ACTIVITY_KINDS)[number]

/** One part of a model session; a pattern activity names the stage it trains, or leaves it to the team's progress. */
export type ModelActivity = {
  readonly activityId: string
  readonly kind: ActivityKind
  readonly title: string
  readonly minutes: Minutes
  readonly stageId: string | null
  readonly conditions: readonly string[]
  readonly points: readonly string[]
}

export type ModelSession = {
  readonly modelSessionId: string
  readonly title: string
  readonly activities: readonly ModelActivity[]
}

/** What a TD is writing; patterns stand by id and are frozen by value when a version is published. */
export type DraftDocument = {
  readonly v: 1
  readonly name: string
  readonly ageGroup: string
  readonly formatId: FormatId
  readonly progressions: readonly Progression[]
  readonly modelSessions: readonly ModelSession[]
}

/** The frozen content of a published version: everything a phone needs, by value. */
export type VersionContent = {
  readonly v: 1
  readonly curriculumId: string
  readonly number: number
  readonly name: string
  readonly ageGroup: string
  readonly formatId: FormatId
  readonly progressions: readonly Progression[]
  readonly modelSessions: readonly ModelSession[]
  readonly patterns: readonly {
    readonly patternId: string
    readonly version: number
    readonly document: PatternDocument
  }[]
  readonly settings: ClubSettings
  readonly checkVersion: string
}

/** A club's own choices where sources conflict or are silent; each is shown as a club setting. */
export type ClubSettings = {
  readonly v: 1
  /** U.S. 7v7: may opponents cross the build-out line when the goalkeeper releases the ball from the hands? Sources conflict. */
  readonly crossingAtRelease: 'when-released' | 'when-touched'
  /** U.S. 7v7: two sets of published sizes disagree on the penalty mark. */
  readonly penaltyMarkYards7v7: 8 | 10
  /** May a coach adopt a version for the own team? */
  readonly coachesAdopt: boolean
  /** Adults the club asks for at every session. */
  readonly adultsRequired: number
  /** Name and phone shown on the sheet; a role holder, never a child. */
  readonly welfareOfficer: string
  /** The club's own values of the age profiles; left out where it has none, as in every version published before. */
  readonly profiles?: ClubProfiles
}

/** Of the settings, what the technical director decides: how patterns are checked. */
export type ClubLimits = Pick<ClubSettings, 'crossingAtRelease' | 'penaltyMarkYards7v7'> & {
  readonly profiles: ClubProfiles
}
