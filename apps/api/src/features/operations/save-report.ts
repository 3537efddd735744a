import type { Operation } from '@espalier/contract/records'
import type { Member } from '@espalier/domain/access'
import { PRESSURES } from '@espalier/domain/curriculum'
import { derivedId } from '../../clock/derived-id'
import type { CommandContext } from '../../commands/run-command'
import type { StoredReport } from '../records/stored-report'
import type { EveningRow } from './queries'
import type { StandingDecision } from './standing'

export type ReportToSave = {
  readonly report: Extract<Operation, { op: 'report-session' }>
  readonly evening: EveningRow
  readonly standing: StandingDecision
  readonly late: boolean
}

/** The rows of a report. The one it supersedes steps back first, because only one report of an evening stands. */
export async function saveReport(context: CommandContext, saved: ReportToSave): Promise<void> {
  if (saved.standing.superseded !== null) await stepBack(context, saved.standing.superseded)
  await insertRecord(context, saved)
  await insertStages(context, saved)
  await insertChanges(context, saved)
}

export function isCoachOf(member: Member, teamId: string): boolean {
  return member.roles.some((held) => held.role === 'coach' && held.teamId === teamId)
}

async function stepBack({ db }: CommandContext, recordId: string): Promise<void> {
  await db.sql.changed({
    name: 'supersede-record',
    text: "update record set standing = 'superseded' where club_id = $1 and record_id = $2",
    values: [db.clubId, recordId],
  })
  await db.sql.changed({
    name: 'supersede-stages',
    text: 'update stage_done set stands = false where club_id = $1 and record_id = $2 and stands',
    values: [db.clubId, recordId],
  })
}

async function insertRecord(context: CommandContext, { report, evening, standing, late }: ReportToSave): Promise<void> {
  const { db, member, entryId } = context
  const { body } = report
  const doc: StoredReport = {
    v: 1,
    stages: body.stages,
    changes: body.changes,
    secondAdult: body.secondAdult,
    deviceAt: report.at,
    zone: report.zone,
  }
  await db.sql.changed({
    name: 'insert-record',
    text: `insert into record (club_id, record_id, date_id, team_id, season_id, week, plan_id, turnout, guests, minutes,
             author_id, confirmed_by, reported_late, supersedes, standing, doc, entry_id)
           values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16, $17)`,
    values: [
      db.clubId,
      report.id,
      body.dateId,
      body.teamId,
      evening.season_id,
      evening.week,
      body.planId,
      body.turnout,
      body.guests,
      body.minutes,
      member.memberId,
      isCoachOf(member, body.teamId) ? member.memberId : null,
      late,
      standing.superseded,
      standing.standing,
      JSON.stringify(doc),
      entryId,
    ],
  })
}

/** Nobody counted attempts: the judgement stands in its own column, and the counts stay empty. */
async function insertStages({ db }: CommandContext, { report, evening, standing }: ReportToSave): Promise<void> {
  const { stages, teamId } = report.body
  await db.sql.changed({
    name: 'insert-stages-done',
    text: `insert into stage_done (club_id, record_id, stage_id, season_id, team_id, week, pressure, minutes, got_out, stands)
           select $1, $2, stage_id, $3, $4, $5, pressure, minutes, got_out, $6
           from unnest($7::uuid[], $8::smallint[], $9::smallint[], $10::text[]) as done (stage_id, pressure, minutes, got_out)`,
    values: [
      db.clubId,
      report.id,
      evening.season_id,
      teamId,
      evening.week,
      standing.standing === 'stands',
      stages.map(({ stageId }) => stageId),
      stages.map(({ pressureReached }) => PRESSURES.indexOf(pressureReached)),
      stages.map((stage) => stage.minutes),
      stages.map(({ gotOut }) => gotOut),
    ],
  })
}

async function insertChanges({ db }: CommandContext, { report }: ReportToSave): Promise<void> {
  const { changes } = report.body
  await db.sql.changed({
    name: 'insert-plan-changes',
    text: `insert into plan_change (club_id, plan_change_id, record_id, stage_id, kind)
           select $1, id, $2, stage_id, kind from unnest($3::uuid[], $4::uuid[], $5::text[]) as change (id, stage_id, kind)`,
    values: [
      db.clubId,
      report.id,
      changes.map((_, at) => derivedId('plan-change', report.id, String(at))),
      changes.map(({ stageId }) => stageId),
      changes.map(({ chip }) => chip),
    ],
  })
}
