import { describe, expect, test } from 'vitest'
import { millimetres, minutes } from '../quantities'
import { planChecks } from './check-plan'
import { evening, halfPitch, squad } from './kit.fixture'
import type { PlannedActivity, SessionPlan } from './plan'
import { planEvening } from './plan-evening'

const facts = {
  slotMinutes: minutes(75),
  space: halfPitch(),
  stageIds: ['first-steps', 'poles', 'one-defender'],
  squadIds: squad(10).map((member) => member.playerId),
}
const plan = planEvening(evening(8))

function codesOf(changed: Partial<SessionPlan>, known = facts) {
  return planChecks({ ...plan, ...changed }, known).map((fault) => `${fault.code} ${fault.pointer}`)
}

function withActivity(index: number, changed: Partial<PlannedActivity>): Partial<SessionPlan> {
  return { activities: plan.activities.map((activity, at) => (at === index ? { ...activity, ...changed } : activity)) }
}

describe('a stored plan', () => {
  test('as the planner made it has no fault', () => {
    expect(codesOf({})).toEqual([])
  })

  test('must fill the slot of its date to the minute, without gap or overlap', () => {
    expect(codesOf({}, { ...facts, slotMinutes: minutes(60) })).toEqual(['minutes-differ-from-slot /totalMinutes'])
    const first = plan.activities[0]!
    expect(codesOf(withActivity(0, { minutes: minutes(first.minutes + 1) }))).toEqual([
      'minutes-do-not-fill /activities',
    ])
    expect(codesOf({ pauses: plan.pauses.slice(1) })).toEqual(['minutes-do-not-fill /activities'])
  })

  test('names only stages of the version', () => {
    const known = { ...facts, stageIds: ['poles'] }
    expect(codesOf({}, known)).toEqual(['unknown-stage /stage/stageId', 'unknown-stage /activities/1/stageId'])
  })

  test('keeps its areas inside the space and apart', () => {
    const area = plan.activities[0]!.areas[0]!
    const outside = { ...area, upMm: millimetres(area.upMm + 30_000) }
    expect(codesOf(withActivity(0, { areas: [outside] }))).toEqual(['area-outside-space /activities/0/areas/0'])
    expect(codesOf(withActivity(0, { areas: [area, area] }))).toEqual(['areas-overlap /activities/0/areas/1'])
    expect(codesOf(withActivity(0, { areas: [] }))).toContain('unknown-area /activities/0/groups/0/area')
  })

  test('names only children of the squad and guests, each in one group', () => {
    const [one, other] = plan.activities[0]!.groups
    const strange = { ...one!, children: [...one!.children, 'stranger'] }
    expect(codesOf(withActivity(0, { groups: [strange, other!] }))).toEqual([
      'unknown-child /activities/0/groups/0/children/4',
    ])
    const twice = { ...one!, children: [...one!.children, other!.children[0]!] }
    expect(codesOf(withActivity(0, { groups: [twice, other!] }))).toEqual([
      'child-in-two-groups /activities/0/groups/1/children/0',
    ])
    expect(codesOf(withActivity(0, { groups: [one!] }))).toEqual(['child-without-group /activities/0/groups'])
    expect(codesOf({ sitsOut: ['guest:AB'] })).toEqual([])
    expect(codesOf({ sitsOut: ['guest:'] })).toEqual(['unknown-child /sitsOut/0'])
  })

  test('puts nobody in two places of a line-up, and nobody there who does not play', () => {
    const { lineups } = plan.activities[1]!
    const [block, ...blocks] = lineups!.blocks
    const doubled = { ...block!, off: [block!.places[0]!.childId] }
    const changed = withActivity(1, { lineups: { ...lineups!, blocks: [doubled, ...blocks] } })
    expect(codesOf(changed)).toEqual(['child-in-two-places /activities/1/lineups/blocks/0'])
    const absent = { ...block!, off: ['c10'] }
    const other = withActivity(1, { lineups: { ...lineups!, blocks: [absent, ...blocks] } })
    expect(codesOf(other)).toEqual(['unknown-child /activities/1/lineups/blocks/0'])
  })
})
