import type { Operation, ReportBody } from '@espalier/contract/records'
import { isLate } from '@espalier/domain/coverage'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import {
  type CommandAnswer,
  type CommandContext,
  type CommandRequest,
  type EntryDraft,
  runCommand,
} from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { ProblemPointer, Refusal } from '../../http/problem-error'
import { findTeam } from '../teams/queries'
import { countBlocks, readPlan } from './count-blocks'
import { type EveningRow, listFollowedStages, listSquadIds, lockEvening } from './queries'
import { isCoachOf, saveReport } from './save-report'
import { decideStanding, lockReports, type StandingDecision } from './standing'

type Report = Extract<Operation, { op: 'report-session' }>

/** What was coached, as an appended fact. A correction supersedes; a second person's report stands beside as a rival. */
export function reportSession(
  deps: Deps,
  request: CommandRequest,
  report: Report,
): Promise<Result<CommandAnswer, Refusal>> {
  const { body } = report
  return runCommand(deps, request, {
    permission: 'operations.write',
    find: (db) => findTeam(db, body.teamId),
    lock: ({ db }) => findTeam(db, body.teamId),
    target: ({ teamId }) => ({ teamId }),
    work: async (context) => {
      const evening = await lockEvening(context.db, body.teamId, body.dateId)
      if (evening === null)
        return refuse({
          code: 'date-unknown',
          errors: [{ pointer: '/body/dateId', detail: 'is no date of this team' }],
        })
      const held = checkHeld(evening, context.now)
      if (!held.ok) return held
      const followed = await listFollowedStages(context.db, body.teamId, evening.local_date)
      const stages = checkStages(body, followed?.stageIds ?? null)
      if (!stages.ok) return stages
      const adult = await checkSecondAdult(context, body, evening)
      if (!adult.ok) return adult
      const reports = await lockReports(context.db, body.dateId)
      const standing = decideStanding(reports, body.supersedes, {
        memberId: context.member.memberId,
        isCoach: isCoachOf(context.member, body.teamId),
      })
      if (!standing.ok) return standing
      const late = isLate(evening.ends_at.getTime(), context.now)
      await saveReport(context, { report, evening, standing: standing.value, late })
      const plan = await readPlan(context.db, body)
      if (plan !== null && standing.value.standing === 'stands')
        await countBlocks(context.db, body.dateId, plan, await listSquadIds(context.db, body.teamId))
      const planSeen = body.planId === null ? null : plan !== null
      const entry = entryOf({ report, planSeen, evening, standing: standing.value, late, now: context.now, followed })
      return ok({ status: 201, id: report.id, version: null, entry })
    },
  })
}

/** Nobody reports what has not happened: not before it begins, and not on a date that was called off or moved. */
function checkHeld(evening: EveningRow, now: number): Result<true, Refusal> {
  const errors = (detail: string) => [{ pointer: '/body/dateId', detail }]
  if (evening.state !== 'on') return refuse({ code: 'evening-not-on', errors: errors(`is ${evening.state}`) })
  if (now < evening.starts_at.getTime())
    return refuse({ code: 'evening-not-begun', errors: errors('has not begun yet') })
  return ok(true)
}

function checkStages(body: ReportBody, stageIds: readonly string[] | null): Result<true, Refusal> {
  if (body.stages.length === 0) return ok(true)
  if (stageIds === null)
    return refuse({
      code: 'nothing-adopted',
      errors: [{ pointer: '/body/stages', detail: 'the team followed no version' }],
    })
  const seen = new Set<string>()
  const errors = body.stages.flatMap(({ stageId }, at): readonly ProblemPointer[] => {
    const pointer = `/body/stages/${at}/stageId`
    if (!stageIds.includes(stageId)) return [{ pointer, detail: 'is no stage of the version that the team followed' }]
    if (seen.has(stageId)) return [{ pointer, detail: 'stands twice' }]
    seen.add(stageId)
    return []
  })
  const changes = body.changes.flatMap(({ stageId }, at): readonly ProblemPointer[] =>
    stageId === null || stageIds.includes(stageId)
      ? []
      : [{ pointer: `/body/changes/${at}/stageId`, detail: 'is no stage of the version that the team followed' }],
  )
  const faults = [...errors, ...changes]
  return faults.length === 0 ? ok(true) : refuse({ code: 'stage-unknown', errors: faults })
}

async function checkSecondAdult(
  { db, member }: CommandContext,
  body: ReportBody,
  evening: EveningRow,
): Promise<Result<true, Refusal>> {
  if (body.secondAdult === null) return ok(true)
  const pointer = '/body/secondAdult'
  if (body.secondAdult === member.memberId)
    return refuse({ code: 'bad-request', errors: [{ pointer, detail: 'must be somebody else than who reports' }] })
  const known = await db.sql.rows({
    name: 'find-second-adult',
    text: `select 1 from membership
           where club_id = $1 and member_id = $2 and (ended_at is null or ended_at >= $3)`,
    values: [db.clubId, body.secondAdult, evening.starts_at],
  })
  return known.length > 0
    ? ok(true)
    : refuse({ code: 'reference-unknown', errors: [{ pointer, detail: 'was nobody of this club on that evening' }] })
}

/** Ids, counts and codes only: who of the children came never enters the record book, only how many. */
function entryOf(facts: {
  readonly report: Report
  /** Whether the plan it names has arrived for this evening; null where it names none. */
  readonly planSeen: boolean | null
  readonly evening: EveningRow
  readonly standing: StandingDecision
  readonly late: boolean
  readonly now: number
  readonly followed: { readonly curriculumId: string; readonly number: number } | null
}): EntryDraft {
  const { report, planSeen, evening, standing, late, followed } = facts
  const { body } = report
  const stages = body.stages.flatMap((stage, at) => [
    [`stage${at + 1}`, stage.stageId] as const,
    [`stage${at + 1}Minutes`, stage.minutes] as const,
    [`stage${at + 1}Pressure`, stage.pressureReached] as const,
    [`stage${at + 1}GotOut`, stage.gotOut] as const,
  ])
  return {
    kind: standing.superseded === null ? 'session.reported' : 'report.superseded',
    subjectId: report.id,
    teamId: body.teamId,
    facts: {
      date: body.dateId,
      localDate: evening.local_date,
      plan: body.planId,
      planSeen,
      curriculum: followed?.curriculumId ?? null,
      number: followed?.number ?? null,
      turnout: body.turnout,
      guests: body.guests,
      minutes: body.minutes,
      secondAdult: body.secondAdult,
      changes: body.changes.length,
      late,
      deviceAt: report.at,
      standing: standing.standing,
      supersedes: standing.superseded,
      ...Object.fromEntries(stages),
    },
  }
}
