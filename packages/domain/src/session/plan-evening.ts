import type { Stage } from '../curriculum'
import type { PatternDocument } from '../pattern'
import type { Space } from '../pitch'
import { type Millimetres, minutes } from '../quantities'
import { AGE_DEFAULTS, type AgeDefaults, ageBand, CHILDREN_A_BALL_MAX } from './age-defaults'
import { type ChosenEvening, chooseEvening } from './choose-stage'
import { countEquipment } from './count-equipment'
import { type FilledSlot, fillSlot } from './fill-slot'
import type { Kit, KitDate, Turnout } from './kit'
import { planNote } from './notes'
import { PLANNER_VERSION, type PlanNote, type SessionPlan } from './plan'
import { type WantedActivities, wantedActivities } from './plan-activities'
import { type ActivityInPlan, planActivity } from './plan-activity'
import { whyNotPractised } from './practise-pattern'
import { setOutWalk } from './set-out'
import { shareItems } from './set-out-items'
import { stageDocument } from './stage-field'
import { type Child, type WhoCame, whoCame } from './who-came'
import { gameSharePermille, wishNotes } from './wishes'

export type EveningFacts = {
  readonly kit: Kit
  readonly date: KitDate
  readonly turnout: Turnout
  readonly space: Space
  readonly paceMm: Millimetres
}

/** Turnouts and slots plans are made for; outside them the plan still stands, and says so. */
const CHILDREN = { min: 4, max: 24 } as const
const SLOT_MINUTES = { min: 45, max: 90 } as const

/**
 * Tonight's session from what the phone knows: the next stage of the adopted version in its model session (or the habit of the
 * age), for who came, on this space, in this slot. Total: every turnout, space, bag and slot gets a plan, and what does not fit
 * is said in its notes. Equal facts give an equal plan, in whatever order the children are listed.
 */
export function planEvening(facts: EveningFacts): SessionPlan {
  const who = whoCame(facts.kit, facts.turnout)
  const age = AGE_DEFAULTS[ageBand(facts.kit.team.ageGroup)]
  const theme = chooseTheme(facts, who.children)
  const wanted = wantedActivities(theme.model, theme.run?.stage ?? null, age, facts.turnout.adults, facts.date.minutes)
  const filled =
    who.children.length === 0 ? nobody(facts) : fillSlot(facts.date.minutes, facts.turnout.adults, claims(wanted))
  const planned = filled.activities.flatMap((time, index) => {
    const activity = wanted.activities[index]
    return activity
      ? [
          planActivity(activity, time, index, {
            ...facts,
            who,
            age,
            run: theme.run,
            choices: facts.kit.adopted?.content.settings,
          }),
        ]
      : []
  })
  return assemble(facts, who, age, theme, wanted, filled, planned)
}

/** What a stage's practice needs of the version. */
export type ThemeRun = { readonly stage: Stage; readonly document: PatternDocument }

type Theme = Pick<ChosenEvening, 'choice' | 'model'> & {
  /** Null where there is no stage, or too few came for it. */
  readonly run: ThemeRun | null
  readonly notes: readonly PlanNote[]
}

function chooseTheme(facts: EveningFacts, children: readonly Child[]): Theme {
  const content = facts.kit.adopted?.content
  if (!content) return { choice: null, model: null, run: null, notes: [planNote('no-version')] }
  const { stage, choice, model } = chooseEvening(content, facts.kit.progress)
  const noModel = model ? [] : [planNote('no-model-session')]
  const document = stage && stageDocument(content, stage)
  if (!stage || !document) return { choice: null, model, run: null, notes: [...noModel, planNote('no-stage')] }
  if (children.length < CHILDREN.min) return { choice: null, model, run: null, notes: noModel }
  const whyNot = whyNotPractised({ document, stage, children, space: facts.space, choices: content.settings })
  if (whyNot) return { choice: null, model, run: null, notes: [...noModel, whyNot] }
  const days = facts.kit.progress.find((progress) => progress.stageId === stage.stageId)?.sessions ?? 0
  return { choice, model, run: { stage, document }, notes: [...noModel, planNote('stage-chosen', stage.title, days)] }
}

function claims(wanted: WantedActivities) {
  return wanted.activities.map((activity) => activity.claim)
}

/** Without a child there is nothing to play: the slot is one pause. */
function nobody(facts: EveningFacts): FilledSlot {
  const slot = facts.date.minutes
  return { activities: [], pauses: [{ kind: 'close', title: 'Nobody came', startMinute: minutes(0), minutes: slot }] }
}

function assemble(
  facts: EveningFacts,
  who: WhoCame,
  age: AgeDefaults,
  theme: Theme,
  wanted: WantedActivities,
  filled: FilledSlot,
  planned: readonly ActivityInPlan[],
): SessionPlan {
  const { kit, date, turnout, space, paceMm } = facts
  const choices = kit.adopted?.content.settings
  const activities = planned.map((each) => each.activity)
  const walk = setOutWalk(
    shareItems(
      planned.flatMap((each) => each.items),
      space,
      choices,
    ),
    space,
    paceMm,
    choices,
  )
  const teamBibs = Math.max(0, ...activities.map((activity) => bibsOf(activity.groups)))
  const balls = Math.max(
    Math.ceil(who.children.length / CHILDREN_A_BALL_MAX.value),
    ...activities.map((each) => each.areas.length),
    0,
  )
  const rondos = new Set(activities.filter((each) => each.kind === 'rondo').map((each) => each.activityId))
  const equipment = countEquipment(walk.stops, teamBibs, balls, kit.equipment, rondos)
  const longestWaitSeconds = Math.max(0, ...planned.map((each) => each.waitSeconds))
  return {
    v: 1,
    planner: PLANNER_VERSION,
    totalMinutes: date.minutes,
    kind: theme.run && activities.some((each) => each.kind === 'pattern') ? 'full' : 'games-only',
    stage: activities.some((each) => each.kind === 'pattern') ? theme.choice : null,
    children: who.children.map((child) => child.playerId),
    sitsOut: who.sitsOut,
    adults: turnout.adults,
    activities,
    pauses: filled.pauses,
    setOut: equipment.stops,
    setOutPaces: walk.paces,
    setOutChecks: walk.checks,
    paceMm,
    equipmentNeeded: equipment.needed,
    equipmentShort: equipment.short,
    substitutes: equipment.substitutes,
    longestWaitSeconds,
    gameSharePermille: gameSharePermille(activities),
    notes: [
      ...turnoutNotes(who, date.minutes),
      ...theme.notes,
      ...(wanted.leftOut.length > 0 ? [planNote('adults-short', wanted.leftOut)] : []),
      ...planned.flatMap((each) => each.notes),
      ...wishNotes(activities, longestWaitSeconds, kit.equipment.ball, who.children.length, age),
      ...equipment.notes,
      ...checkNotes(walk.checks),
    ],
  }
}

function bibsOf(groups: SessionPlan['activities'][number]['groups']): number {
  return groups.filter((group) => group.bibs).reduce((sum, group) => sum + group.children.length, 0)
}

function turnoutNotes(who: WhoCame, slot: number): readonly PlanNote[] {
  const count = who.children.length
  return [
    ...(count < CHILDREN.min ? [planNote('too-few-children', count)] : []),
    ...(count > CHILDREN.max ? [planNote('too-many-children', count)] : []),
    ...(slot < SLOT_MINUTES.min || slot > SLOT_MINUTES.max ? [planNote('minutes-out-of-range', slot)] : []),
    ...(who.sitsOut.length > 0 ? [planNote('sits-out', who.sitsOut.length)] : []),
  ]
}

function checkNotes(checks: SessionPlan['setOutChecks']): readonly PlanNote[] {
  if (checks.length === 0) return []
  const words = checks.map((check) => `${check.paces} paces from ${check.fromNumber} to ${check.toNumber}`)
  return [planNote('set-out-check', words)]
}
