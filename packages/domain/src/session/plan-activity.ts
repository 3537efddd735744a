import type { FormatChoices } from '../formats'
import type { Space } from '../pitch'
import { assert, type Minutes } from '../quantities'
import type { AgeDefaults } from './age-defaults'
import { AREA_SIZES } from './area-sizes'
import type { ThemeRun } from './choose-theme'
import { fitAreas } from './fit-areas'
import { planNote } from './notes'
import type { Group, PlanNote, PlannedActivity } from './plan'
import type { WantedActivity } from './plan-activities'
import { practisePattern } from './practise-pattern'
import { itemsOfActivity, type SetOutItem } from './set-out-items'
import { splitGroups } from './split-groups'
import type { WhoCame } from './who-came'

/** An activity together with what it puts on the ground and what it makes the plan say. */
export type ActivityInPlan = {
  readonly activity: PlannedActivity
  readonly items: readonly SetOutItem[]
  readonly waitSeconds: number
  readonly notes: readonly PlanNote[]
}

export type ActivityFacts = {
  readonly who: WhoCame
  readonly age: AgeDefaults
  readonly space: Space
  readonly turnout: { readonly adults: number }
  readonly run: ThemeRun | null
  readonly choices: FormatChoices | undefined
}

type Time = { readonly startMinute: Minutes; readonly minutes: Minutes }

export function planActivity(wanted: WantedActivity, time: Time, turn: number, facts: ActivityFacts): ActivityInPlan {
  return wanted.kind === 'pattern'
    ? planPractice(wanted, time, facts)
    : planGame(wanted, wanted.kind, time, turn, facts)
}

function planPractice(wanted: WantedActivity, time: Time, facts: ActivityFacts): ActivityInPlan {
  const { run, who, space, age, turnout, choices } = facts
  assert(run, 'a pattern is planned only with a stage that can be run')
  const asked = { ...run, children: who.children, adults: turnout.adults, minutes: time.minutes, space, age, choices }
  const practice = practisePattern(asked)
  assert(practice, 'a stage that can be run has a field')
  const group: Group = {
    name: 'Everybody',
    role: 'pattern',
    children: who.children.map((child) => child.playerId),
    area: 0,
    bibs: false,
  }
  const activity: PlannedActivity = {
    ...writtenOf(wanted, time),
    title: wanted.title || run.stage.title,
    detail: practice.detail,
    stageId: run.stage.stageId,
    pressure: run.stage.pressure,
    areas: practice.areas,
    groups: [group],
    lineups: practice.lineups,
    opponents: practice.opponents,
    roundsABlock: practice.roundsABlock,
    takeTurns: practice.takeTurns,
    secondsARound: practice.secondsARound,
    besideArea: practice.besideArea,
    conditions: [...wanted.conditions, ...run.stage.conditions],
    points: wanted.points.length > 0 ? wanted.points : pointsOf(run),
  }
  const items = itemsOfActivity(activity, practice.places, space)
  return { activity, items, waitSeconds: practice.waitSeconds, notes: practice.notes }
}

function pointsOf(run: ThemeRun): readonly string[] {
  return [...new Set(run.document.steps.map((step) => step.point).filter((point) => point !== ''))]
}

function planGame(
  wanted: WantedActivity,
  kind: Exclude<WantedActivity['kind'], 'pattern'>,
  time: Time,
  turn: number,
  facts: ActivityFacts,
): ActivityInPlan {
  const ids = facts.who.children.map((child) => child.playerId)
  const { groups, detail } = splitGroups(kind, ids, facts.turnout.adults, facts.age, turn)
  const counts = groups.reduce<number[]>((sizes, group) => {
    sizes[group.area] = (sizes[group.area] ?? 0) + group.children.length
    return sizes
  }, [])
  const { areas, squareMetresEach } = fitAreas(kind, counts, facts.space)
  const activity: PlannedActivity = {
    ...writtenOf(wanted, time),
    detail,
    stageId: null,
    pressure: null,
    areas,
    groups,
    lineups: null,
    opponents: 0,
    roundsABlock: 0,
    takeTurns: 0,
    secondsARound: 0,
    besideArea: null,
  }
  return {
    activity,
    items: itemsOfActivity(activity, [], facts.space),
    waitSeconds: 0,
    notes: roomNotes(activity, squareMetresEach),
  }
}

/** Half the usual least is no activity any more: then it does not fit. */
function roomNotes(activity: PlannedActivity, squareMetresEach: number): readonly PlanNote[] {
  const { min, usual } = AREA_SIZES[activity.kind].value
  if (squareMetresEach * 2 < min) return [planNote('space-too-small', activity.title)]
  return squareMetresEach < min ? [planNote('small-space', activity.title, squareMetresEach, usual)] : []
}

function writtenOf(wanted: WantedActivity, time: Time) {
  const { activityId, kind, title, conditions, points } = wanted
  return { activityId, kind, title, conditions, points, ...time }
}
