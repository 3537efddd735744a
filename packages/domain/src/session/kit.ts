import type { VersionContent } from '../curriculum'
import type { FormatId } from '../formats'
import type { Space } from '../pitch'
import type { Instant, LocalDate, Millimetres, Minutes } from '../quantities'

export const EQUIPMENT_KINDS = ['cone', 'pole', 'small-goal', 'ball', 'bib'] as const
export type EquipmentKind = (typeof EQUIPMENT_KINDS)[number]
export type Equipment = Readonly<Record<EquipmentKind, number>>

/** A child as the coach's phone knows it: a short name, a shirt, two positions. Nothing else, ever. */
export type SquadMember = {
  readonly playerId: string
  readonly shortName: string
  readonly shirt: number | null
  readonly home: string | null
  readonly stretch: string | null
  readonly goalkeeper: 'yes' | 'sometimes' | 'no'
  readonly foot: 'left' | 'right' | 'both'
  /** Blocks in pattern activities so far this block of weeks, by side: line-ups even them out over weeks. */
  readonly past: { readonly blocks: number; readonly left: number; readonly right: number }
}

export type KitDate = {
  readonly dateId: string
  readonly startsAt: Instant
  readonly minutes: Minutes
  readonly localDate: LocalDate
  /** As HH:MM in the club's zone; zones are resolved by the server. */
  readonly localStart: string
  readonly spaceId: string | null
  readonly state: 'on' | 'cancelled' | 'moved'
  readonly reported: boolean
}

/** How far a team has come with one stage, from records that stand. */
export type StageProgress = {
  readonly stageId: string
  /** Separate days on which it was practised. */
  readonly sessions: number
  readonly lastDate: LocalDate | null
  readonly attemptsLeft: number
  readonly attemptsRight: number
  readonly gotOutLeft: number
  readonly gotOutRight: number
}

/** Everything a phone needs for one team's next two weeks. */
export type Kit = {
  readonly v: 1
  readonly club: { readonly clubId: string; readonly name: string; readonly zone: string; readonly demo: boolean }
  readonly team: {
    readonly teamId: string
    readonly name: string
    readonly ageGroup: string
    readonly formatId: FormatId
    readonly seasonId: string
    /** Null where nobody has measured; not there in kits that phones saved before teams could be measured. */
    readonly reach?: MeasuredReach | null
  }
  /** Adults of this team, for the second adult's name on a report. */
  readonly adults: readonly { readonly memberId: string; readonly displayName: string }[]
  readonly dates: readonly KitDate[]
  readonly spaces: readonly { readonly spaceId: string; readonly space: Space }[]
  readonly equipment: Equipment
  readonly squad: readonly SquadMember[]
  readonly adopted: {
    readonly curriculumId: string
    readonly number: number
    readonly contentHash: string
    readonly content: VersionContent
  } | null
  readonly progress: readonly StageProgress[]
}

/** How far the team's passes along the ground find a gate, as its coach measured it; nothing of any child. */
export type MeasuredReach = {
  readonly strongFootMm: Millimetres
  readonly otherFootMm: Millimetres
  readonly measuredOn: LocalDate
}

/** Tonight's facts as the coach ticks them. */
export type Turnout = {
  readonly here: readonly string[]
  /** Children who came but sit out. */
  readonly sitsOut: readonly string[]
  /** Guests by initials, for this evening only. */
  readonly guests: readonly string[]
  readonly adults: number
}
