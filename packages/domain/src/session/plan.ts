import type { ActivityKind, Pressure } from '../curriculum'
import type { LineupPlan } from '../lineups'
import type { Landmark } from '../pitch'
import type { Millimetres, Minutes, SourceKind } from '../quantities'
import type { Equipment, EquipmentKind } from './kit'

/** The planner's own version, stored with every plan; an old plan is never re-planned silently. */
export const PLANNER_VERSION = 1

/** A rectangle of tonight's space: its middle and size in pitch coordinates (up the pitch, right as the team attacks). */
export type Area = {
  readonly upMm: Millimetres
  readonly rightMm: Millimetres
  readonly lengthMm: Millimetres
  readonly widthMm: Millimetres
}

export const GROUP_ROLES = ['team', 'plus', 'rondo', 'pattern'] as const
export type Group = {
  readonly name: string
  /** team: one side of a game; plus: plays with whoever has the ball; rondo: all children of one rondo; pattern: everybody in the line-ups. */
  readonly role: (typeof GROUP_ROLES)[number]
  /** Ids of the squad, or guests as guest:initials; each child of the evening stands in exactly one group of an activity. */
  readonly children: readonly string[]
  /** Which of the activity's areas it plays in, from 0. */
  readonly area: number
  readonly bibs: boolean
}

export type PlannedActivity = {
  readonly activityId: string
  readonly kind: ActivityKind
  readonly title: string
  /** One short line under the title: "4v4, small goals". */
  readonly detail: string
  /** Minutes after the evening's start. */
  readonly startMinute: Minutes
  readonly minutes: Minutes
  readonly stageId: string | null
  readonly pressure: Pressure | null
  readonly areas: readonly Area[]
  readonly groups: readonly Group[]
  /** Who plays where in which block. Of those `off`, `opponents` defend each round: whoever has waited longest. */
  readonly lineups: LineupPlan | null
  readonly opponents: number
  /** Attempts in each block of the line-ups, and how long one takes with the walk back; 0 without line-ups. */
  readonly roundsABlock: number
  /** So many neighbouring blocks alternate round by round, so that nobody waits long; 1: one block after the other; 0 without. */
  readonly takeTurns: number
  readonly secondsARound: number
  /** Where a second adult is here: an area beside the pattern where those next in keep the ball, or null. */
  readonly besideArea: number | null
  readonly conditions: readonly string[]
  readonly points: readonly string[]
}

export const PAUSE_KINDS = ['change', 'water', 'close'] as const
/** Minutes between activities: moving people and cones, water, or bringing the children in at the end. */
export type PlannedPause = {
  readonly kind: (typeof PAUSE_KINDS)[number]
  readonly title: string
  readonly startMinute: Minutes
  readonly minutes: Minutes
}

/** Lines that a walk may follow, where they are painted or flagged at that venue. */
export const WALK_LINES = [
  'goal-line',
  'left-touchline',
  'right-touchline',
  'penalty-area-top',
  'build-out-line',
  'halfway',
  'far-goal-line',
] as const
export type WalkLine = (typeof WALK_LINES)[number]

/**
 * One stop of the set-out walk. The first is always the bag (number 0, no legs): it lies on a landmark that exists
 * there, or, on a plain space, it is the landmark. The walker faces up the pitch there; every turn is from the last heading.
 */
export type SetOutStop = {
  readonly number: number
  readonly item: EquipmentKind | 'bag'
  /** Used instead where equipment is short: a bib for a cone, a cone for a pole, two cones for a small goal. */
  readonly instead: EquipmentKind | null
  readonly upMm: Millimetres
  readonly rightMm: Millimetres
  /** Where the walk was last re-zeroed: a landmark that exists there, or the bag. */
  readonly from: Landmark | 'bag'
  readonly legs: readonly WalkLeg[]
  /** What it is for, as the coach reads it: "RW starts here". */
  readonly purpose: string
  /** Which way a small goal's mouth looks; null for everything else. */
  readonly mouth: 'up' | 'down' | 'left' | 'right' | null
  readonly activityIds: readonly string[]
}

export type WalkLeg = {
  readonly turn: 'straight' | 'left' | 'right' | 'back'
  /** Whole paces of `paceMm`, at least one. A stop without legs lies less than half a pace away. */
  readonly paces: number
  readonly lengthMm: Millimetres
  /** The landmark this leg ends at: the walk starts from zero there. */
  readonly to: Landmark | null
  /** The line this leg follows. */
  readonly along: WalkLine | null
  /** Where the walker stands after this leg, by the paces counted; the drawing joins these. */
  readonly upMm: Millimetres
  readonly rightMm: Millimetres
  /** Paces after which a bib is dropped, half-way along a long leg; null on a short one, or where bibs are short. */
  readonly bibAfterPaces: number | null
}

/** Two stops whose distance proves the set-out: they should be so many paces apart. */
export type SetOutCheck = {
  readonly fromNumber: number
  readonly toNumber: number
  readonly paces: number
  readonly lengthMm: Millimetres
}

export const PLAN_NOTE_CODES = [
  'too-few-children',
  'too-many-children',
  'games-only',
  'no-version',
  'no-model-session',
  'no-stage',
  'stage-chosen',
  'one-side',
  'opponents-short',
  'positions-lack-players',
  'goalkeeper-asked',
  'rounds-short',
  'cut-to-space',
  'small-space',
  'space-too-small',
  'wish-wait',
  'wish-game-share',
  'wish-balls',
  'wish-theme-share',
  'adults-short',
  'equipment-instead',
  'equipment-short',
  'bibs-short',
  'minutes-out-of-range',
  'sits-out',
  'set-out-check',
] as const
export type PlanNote = { readonly code: (typeof PLAN_NOTE_CODES)[number]; readonly sentence: string }

/** Why tonight trains this stage. */
export type StageChoice = {
  readonly stageId: string
  readonly reason: 'named-by-model' | 'next' | 'again'
  readonly kind: SourceKind
}

export type EquipmentSubstitute = {
  readonly item: EquipmentKind
  readonly instead: EquipmentKind
  /** How many of `item` are replaced. */
  readonly count: number
}

export type SessionPlan = {
  readonly v: 1
  readonly planner: typeof PLANNER_VERSION
  readonly totalMinutes: Minutes
  /** games-only: fewer children than the stage needs, or no stage; the note says why. */
  readonly kind: 'full' | 'games-only'
  readonly stage: StageChoice | null
  /** Everybody who plays, in id order; sitsOut came but plays in no group. */
  readonly children: readonly string[]
  readonly sitsOut: readonly string[]
  readonly adults: number
  readonly activities: readonly PlannedActivity[]
  /** Activities and pauses together fill totalMinutes exactly. */
  readonly pauses: readonly PlannedPause[]
  readonly setOut: readonly SetOutStop[]
  readonly setOutPaces: number
  readonly setOutChecks: readonly SetOutCheck[]
  readonly paceMm: Millimetres
  readonly equipmentNeeded: Equipment
  /** Needed and not there, before anything stands in for it. */
  readonly equipmentShort: Equipment
  readonly substitutes: readonly EquipmentSubstitute[]
  /** Longest wait of any child in seconds, and the share of playing time spent in games, in permille. */
  readonly longestWaitSeconds: number
  readonly gameSharePermille: number
  readonly notes: readonly PlanNote[]
}
