import type { Space } from '../pitch'
import { type Millimetres, type Minutes, minutes } from '../quantities'
import { AGE_DEFAULTS, type AgeDefaults, ageBand, CHILDREN_A_BALL_MAX } from './age-defaults'
import { CHILDREN_MIN, chooseTheme, type Theme } from './choose-theme'
import { type CountedEquipment, countEquipment } from './count-equipment'
import { type FilledSlot, fillSlot } from './fill-slot'
import type { Kit, KitDate, Turnout } from './kit'
import { planNote } from './notes'
import { PLANNER_VERSION, type PlanNote, type PlannedActivity, type SessionPlan } from './plan'
import { type WantedActivities, wantedActivities } from './plan-activities'
import { type ActivityInPlan, planActivity } from './plan-activity'
import { type SetOut, setOutWalk } from './set-out'
import { shareItems } from './set-out-items'
import { type WhoCame, whoCame } from './who-came'
import { gameSharePermille, wishNotes } from './wishes'

export type EveningFacts = {
  readonly kit: Kit
  readonly date: KitDate
  readonly turnout: Turnout
  readonly space: Space
  readonly paceMm: Millimetres
}

/** Turnouts and slots plans are made for; outside them the plan still stands, and says so. */
const CHILDREN_MAX = 24
const SLOT_MINUTES = { min: 45, max: 90 } as const

/**
 * Tonight's session from what the phone knows: the next stage of the adopted version in its model session (or the habit of the
 * age), for who came, on this space, in this slot. Total: every turnout, space, bag and slot gets a plan, and what does not fit
 * is said in its notes. Equal facts give an equal plan, in whatever order the children are listed.
 */
export function planEvening(facts: EveningFacts): SessionPlan {
  const { kit, date, turnout, space } = facts
  const who = whoCame(kit, turnout)
  const age = AGE_DEFAULTS[ageBand(kit.team.ageGroup)]
  const theme = chooseTheme(kit, who.children, space)
  const wanted = wantedActivities(theme.model, theme.run?.stage ?? null, age, turnout.adults, date.minutes)
  const claims = wanted.activities.map((activity) => activity.claim)
  const filled = who.children.length === 0 ? nobodyCame(date.minutes) : fillSlot(date.minutes, turnout.adults, claims)
  const choices = kit.adopted?.content.settings
  const planned = filled.activities.flatMap((time, index) => {
    const activity = wanted.activities[index]
    const withAll = { who, age, space, turnout, run: theme.run, choices }
    return activity ? [planActivity(activity, time, index, withAll)] : []
  })
  return assemble({ facts, who, age, theme, wanted, filled, planned })
}

/** Without a child there is nothing to play: the slot is one pause. */
function nobodyCame(slot: Minutes): FilledSlot {
  return { activities: [], pauses: [{ kind: 'close', title: 'Nobody came', startMinute: minutes(0), minutes: slot }] }
}

type Parts = {
  readonly facts: EveningFacts
  readonly who: WhoCame
  readonly age: AgeDefaults
  readonly theme: Theme
  readonly wanted: WantedActivities
  readonly filled: FilledSlot
  readonly planned: readonly ActivityInPlan[]
}

function assemble(parts: Parts): SessionPlan {
  const { facts, who, theme, filled, planned } = parts
  const activities = planned.map((each) => each.activity)
  const walk = walkOf(facts, planned)
  const equipment = equipmentOf(facts, activities, walk, who.children.length)
  const isFull = activities.some((activity) => activity.kind === 'pattern')
  return {
    v: 1,
    planner: PLANNER_VERSION,
    totalMinutes: facts.date.minutes,
    kind: isFull ? 'full' : 'games-only',
    stage: isFull ? theme.choice : null,
    children: who.children.map((child) => child.playerId),
    sitsOut: who.sitsOut,
    adults: facts.turnout.adults,
    activities,
    pauses: filled.pauses,
    setOut: equipment.stops,
    setOutPaces: walk.paces,
    setOutChecks: walk.checks,
    paceMm: facts.paceMm,
    equipmentNeeded: equipment.needed,
    equipmentShort: equipment.short,
    substitutes: equipment.substitutes,
    longestWaitSeconds: longestWait(planned),
    gameSharePermille: gameSharePermille(activities),
    notes: notesOf(parts, activities, equipment, walk),
  }
}

function walkOf({ kit, space, paceMm }: EveningFacts, planned: readonly ActivityInPlan[]): SetOut {
  const choices = kit.adopted?.content.settings
  const items = planned.flatMap((each) => each.items)
  return setOutWalk(shareItems(items, space, choices), space, paceMm, choices)
}

/** The most bibs and balls any one activity needs; a ball for five children at least. */
function equipmentOf(
  facts: EveningFacts,
  activities: readonly PlannedActivity[],
  walk: SetOut,
  children: number,
): CountedEquipment {
  const teamBibs = Math.max(0, ...activities.map(bibsOf))
  const balls = Math.max(
    Math.ceil(children / CHILDREN_A_BALL_MAX.value),
    ...activities.map((each) => each.areas.length),
  )
  const rondos = activities.filter((each) => each.kind === 'rondo').map((each) => each.activityId)
  return countEquipment(walk.stops, teamBibs, balls, facts.kit.equipment, new Set(rondos))
}

function bibsOf(activity: PlannedActivity): number {
  return activity.groups.filter((group) => group.bibs).reduce((sum, group) => sum + group.children.length, 0)
}

function longestWait(planned: readonly ActivityInPlan[]): number {
  return Math.max(0, ...planned.map((each) => each.waitSeconds))
}

function notesOf(
  { facts, who, age, theme, wanted, planned }: Parts,
  activities: readonly PlannedActivity[],
  equipment: CountedEquipment,
  walk: SetOut,
): readonly PlanNote[] {
  return [
    ...turnoutNotes(who, facts.date.minutes),
    ...theme.notes,
    ...(wanted.leftOut.length > 0 ? [planNote('adults-short', wanted.leftOut)] : []),
    ...planned.flatMap((each) => each.notes),
    ...wishNotes(activities, longestWait(planned), facts.kit.equipment.ball, who.children.length, age),
    ...equipment.notes,
    ...checkNotes(walk.checks),
  ]
}

function turnoutNotes(who: WhoCame, slot: number): readonly PlanNote[] {
  const count = who.children.length
  return [
    ...(count < CHILDREN_MIN ? [planNote('too-few-children', count)] : []),
    ...(count > CHILDREN_MAX ? [planNote('too-many-children', count)] : []),
    ...(slot < SLOT_MINUTES.min || slot > SLOT_MINUTES.max ? [planNote('minutes-out-of-range', slot)] : []),
    ...(who.sitsOut.length > 0 ? [planNote('sits-out', who.sitsOut.length)] : []),
  ]
}

function checkNotes(checks: SessionPlan['setOutChecks']): readonly PlanNote[] {
  if (checks.length === 0) return []
  const words = checks.map((check) => `${check.paces} paces from ${check.fromNumber} to ${check.toNumber}`)
  return [planNote('set-out-check', words)]
}
