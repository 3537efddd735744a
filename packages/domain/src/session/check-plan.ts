import type { Space } from '../pitch'
import type { Minutes } from '../quantities'
import { areaInsideSpace, areasOverlap } from './fit-areas'
import type { PlannedActivity, SessionPlan } from './plan'
import { GUEST_PREFIX } from './who-came'

export const PLAN_FAULT_CODES = [
  'minutes-differ-from-slot',
  'minutes-do-not-fill',
  'unknown-stage',
  'area-outside-space',
  'areas-overlap',
  'unknown-area',
  'unknown-child',
  'child-in-two-groups',
  'child-without-group',
  'child-in-two-places',
] as const

/** What is wrong with a plan, and where: a JSON pointer (RFC 6901) into it. */
export type PlanFault = { readonly code: (typeof PLAN_FAULT_CODES)[number]; readonly pointer: string }

/** What the server knows by itself of the evening a plan is for. */
export type PlanFacts = {
  readonly slotMinutes: Minutes
  readonly space: Space
  /** Stages of the version that the team follows; empty without one. */
  readonly stageIds: readonly string[]
  /** Squad ids; guests carry their own prefix. */
  readonly squadIds: readonly string[]
}

/**
 * What must hold of any plan, whoever computed it and whatever the coach changed in it since: a plan that breaks it is
 * refused. Never compares with a plan of the server's own.
 */
export function planChecks(plan: SessionPlan, facts: PlanFacts): readonly PlanFault[] {
  const known = new Set(facts.squadIds)
  const stages = new Set(facts.stageIds)
  const isKnown = (id: string) => known.has(id) || (id.startsWith(GUEST_PREFIX) && id.length > GUEST_PREFIX.length)
  return [
    ...timeFaults(plan, facts.slotMinutes),
    ...(plan.stage !== null && !stages.has(plan.stage.stageId) ? [fault('unknown-stage', '/stage/stageId')] : []),
    ...unknownChildren(plan.children, '/children', isKnown),
    ...unknownChildren(plan.sitsOut, '/sitsOut', isKnown),
    ...plan.activities.flatMap((activity, index) => {
      const at = `/activities/${index}`
      const isUnknownStage = activity.stageId !== null && !stages.has(activity.stageId)
      return [
        ...(isUnknownStage ? [fault('unknown-stage', `${at}/stageId`)] : []),
        ...areaFaults(activity, at, facts.space),
        ...groupFaults(activity, at, plan.children, isKnown),
        ...lineupFaults(activity, at, plan.children),
      ]
    }),
  ]
}

function fault(code: PlanFault['code'], pointer: string): PlanFault {
  return { code, pointer }
}

/** Activities and pauses, by their start, must lie end to end from minute 0 to the end of the slot. */
function timeFaults(plan: SessionPlan, slotMinutes: Minutes): readonly PlanFault[] {
  const parts = [...plan.activities, ...plan.pauses].toSorted(
    (a, b) => a.startMinute - b.startMinute || a.minutes - b.minutes,
  )
  let end = 0
  const isEndToEnd = parts.every((part) => {
    const fits = part.startMinute === end
    end = part.startMinute + part.minutes
    return fits
  })
  return [
    ...(plan.totalMinutes === slotMinutes ? [] : [fault('minutes-differ-from-slot', '/totalMinutes')]),
    ...(isEndToEnd && end === plan.totalMinutes ? [] : [fault('minutes-do-not-fill', '/activities')]),
  ]
}

function areaFaults(activity: PlannedActivity, at: string, space: Space): readonly PlanFault[] {
  return activity.areas.flatMap((area, index) => {
    const overlaps = activity.areas.slice(0, index).some((other) => areasOverlap(area, other))
    return [
      ...(areaInsideSpace(area, space) ? [] : [fault('area-outside-space', `${at}/areas/${index}`)]),
      ...(overlaps ? [fault('areas-overlap', `${at}/areas/${index}`)] : []),
    ]
  })
}

function groupFaults(
  activity: PlannedActivity,
  at: string,
  children: readonly string[],
  isKnown: (id: string) => boolean,
): readonly PlanFault[] {
  const seen = new Set<string>()
  const faults: PlanFault[] = []
  activity.groups.forEach((group, index) => {
    if (group.area >= activity.areas.length) faults.push(fault('unknown-area', `${at}/groups/${index}/area`))
    faults.push(...unknownChildren(group.children, `${at}/groups/${index}/children`, isKnown))
    group.children.forEach((id, place) => {
      if (seen.has(id)) faults.push(fault('child-in-two-groups', `${at}/groups/${index}/children/${place}`))
      seen.add(id)
    })
  })
  return children.every((id) => seen.has(id)) ? faults : [...faults, fault('child-without-group', `${at}/groups`)]
}

/** A line-up names only children who play tonight, each in one place of a block. */
function lineupFaults(activity: PlannedActivity, at: string, children: readonly string[]): readonly PlanFault[] {
  const playing = new Set(children)
  return (activity.lineups?.blocks ?? []).flatMap((block, index) => {
    const pointer = `${at}/lineups/blocks/${index}`
    const named = [...block.places.map((place) => place.childId), ...block.off]
    return [
      ...(named.every((id) => playing.has(id)) ? [] : [fault('unknown-child', pointer)]),
      ...(new Set(named).size === named.length ? [] : [fault('child-in-two-places', pointer)]),
    ]
  })
}

function unknownChildren(ids: readonly string[], at: string, isKnown: (id: string) => boolean): readonly PlanFault[] {
  return ids.flatMap((id, index) => (isKnown(id) ? [] : [fault('unknown-child', `${at}/${index}`)]))
}
