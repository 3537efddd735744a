import type { ActivityKind, Pressure } from '../curriculum'
import type { LineupPlan } from '../lineups'
import type { Landmark } from '../pitch'
import type { Millimetres, Minutes } from '../quantities'
import type { EquipmentKind } from './kit'

/** The planner's own version, stored with every plan; an old plan is never re-planned silently. */
export const PLANNER_VERSION = 1

/** A rectangle of tonight's space: its middle and size in pitch coordinates. */
export type Area = {
  readonly upMm: Millimetres
  readonly rightMm: Millimetres
  readonly lengthMm: Millimetres
  readonly widthMm: Millimetres
}

export type PlannedActivity = {
  readonly activityId: string
  readonly kind: ActivityKind
  readonly title: string
  readonly startMinute: Minutes
  readonly minutes: Minutes
  readonly stageId: string | null
  readonly pressure: Pressure | null
  readonly areas: readonly Area[]
  /** Children by group; ids of the squad, or guests as guest:initials. */
  readonly groups: readonly { readonly name: string; readonly children: readonly string[] }[]
  readonly lineups: LineupPlan | null
  readonly conditions: readonly string[]
  readonly points: readonly string[]
}

/** One stop of the set-out walk. */
export type SetOutStop = {
  readonly number: number
  readonly item: EquipmentKind | 'bag'
  /** Used instead where equipment is short: a bib for a cone. */
  readonly instead: EquipmentKind | null
  readonly upMm: Millimetres
  readonly rightMm: Millimetres
  /** Where the walk was last re-zeroed: a landmark that exists there, or the bag. */
  readonly from: Landmark | 'bag'
  readonly legs: readonly WalkLeg[]
  readonly activityIds: readonly string[]
}

export type WalkLeg = {
  readonly turn: 'straight' | 'left' | 'right' | 'back'
  readonly paces: number
  readonly lengthMm: Millimetres
  /** A landmark this leg ends at or follows, if there is one. */
  readonly to: Landmark | null
}

export type PlanNote = { readonly code: string; readonly sentence: string }

export type SessionPlan = {
  readonly v: 1
  readonly planner: typeof PLANNER_VERSION
  readonly totalMinutes: Minutes
  /** games-only: fewer children than the stage needs; the note says why. */
  readonly kind: 'full' | 'games-only'
  readonly activities: readonly PlannedActivity[]
  readonly setOut: readonly SetOutStop[]
  readonly paceMm: Millimetres
  readonly equipmentNeeded: Readonly<Record<EquipmentKind, number>>
  readonly equipmentShort: Readonly<Record<EquipmentKind, number>>
  /** Longest wait of any child in seconds, and the share of time spent in games, in permille. */
  readonly longestWaitSeconds: number
  readonly gameSharePermille: number
  readonly notes: readonly PlanNote[]
}
