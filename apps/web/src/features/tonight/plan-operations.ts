import type { Operation } from '@espalier/contract/records'
import type { EveningFacts, SessionPlan } from '@espalier/domain/session'

export type Stamp = { readonly at: string; readonly newId: () => string }

export type PlanUsed = {
  readonly facts: EveningFacts
  readonly plan: SessionPlan
  readonly spaceId: string | null
  readonly inputsHash: string
}

export type PlanOperations = { readonly planId: string; readonly operations: readonly Operation[] }

/** What the server is told once a plan is used: the plan as it was computed here, and who came. */
export function planOperations({ facts, plan, spaceId, inputsHash }: PlanUsed, stamp: Stamp): PlanOperations {
  const { kit, date, turnout } = facts
  const of = { teamId: kit.team.teamId, dateId: date.dateId }
  const envelope = () => ({ v: 1 as const, id: stamp.newId(), at: stamp.at, zone: kit.club.zone })
  const kept: Operation = {
    op: 'keep-plan',
    ...envelope(),
    body: {
      ...of,
      curriculumId: kit.adopted?.curriculumId ?? null,
      number: kit.adopted?.number ?? null,
      spaceId,
      inputsHash,
      plan,
    },
  }
  const here = new Set(turnout.here)
  const marks = kit.squad.map(({ playerId }) => ({ playerId, came: here.has(playerId) }))
  // A team whose squad is not written yet has nobody to mark.
  const attendance: readonly Operation[] =
    marks.length === 0 ? [] : [{ op: 'mark-attendance', ...envelope(), body: { ...of, marks } }]
  return { planId: kept.id, operations: [kept, ...attendance] }
}
