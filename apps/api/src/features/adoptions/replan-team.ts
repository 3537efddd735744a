import { type PlannedStage, planStages, stagesToPlan } from '@espalier/domain/season'
import { derivedId } from '../../clock/derived-id'
import type { CommandContext } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import { openContent } from '../curricula/frozen-content'
import type { TeamOnly } from '../teams/queries'
import { type AdoptionRow, adoptionInForce, listAdoptions } from './queries'

type FutureDateRow = {
  readonly date_id: string
  readonly local_date: string
  readonly week: string
  readonly planned_before: boolean
}
type OpenRow = {
  readonly planned_id: string
  readonly date_id: string
  readonly stage_id: string
  readonly minutes: number
}

/**
 * Plans the dates that have not begun by the versions in force on them, and returns how many rows it added. What stays
 * as it was is left alone; what changes is closed and a new row added; dates that have begun keep their plan for ever.
 * The team is locked, so nobody plans it at the same time.
 */
export async function replanTeam(context: CommandContext, team: TeamOnly): Promise<number> {
  const { db } = context
  const adoptions = await listAdoptions(db, team.teamId)
  const dates = await listFutureDates(context, team.teamId)
  const wanted = planByVersion(adoptions, dates, await countPractisedDays(db, team.teamId))
  const open = await listOpenRows(
    db,
    dates.map(({ date_id }) => date_id),
  )
  const same = (a: PlannedStage, b: OpenRow) =>
    a.dateId === b.date_id && a.stageId === b.stage_id && a.minutes === b.minutes
  const closing = open.filter((row) => !wanted.some((plan) => same(plan, row)))
  const adding = wanted.filter((plan) => !open.some((row) => same(plan, row)))
  await closeRows(context, closing)
  await insertRows(context, team, adding, dates)
  return adding.length
}

function planByVersion(
  adoptions: readonly AdoptionRow[],
  dates: readonly FutureDateRow[],
  practised: ReadonlyMap<string, number>,
): readonly PlannedStage[] {
  const days = new Map(practised)
  const planned: PlannedStage[] = []
  for (const [at, adoption] of adoptions.entries()) {
    const own = dates.filter((date) => adoptionInForce(adoptions, date.local_date) === adoptions[at])
    const content = openContent(adoption.content_hash.toString('hex'), adoption.content)
    const plan = planStages(
      stagesToPlan(content, days),
      own.map((date) => ({ dateId: date.date_id, localDate: date.local_date })),
    )
    for (const { stageId } of plan) days.set(stageId, (days.get(stageId) ?? 0) + 1)
    planned.push(...plan)
  }
  return planned
}

function listFutureDates({ db, at }: CommandContext, teamId: string): Promise<readonly FutureDateRow[]> {
  return db.sql.rows<FutureDateRow>({
    name: 'list-future-dates',
    text: `select d.date_id, d.local_date, d.week,
             exists (select from stage_planned p where p.club_id = d.club_id and p.date_id = d.date_id) as planned_before
           from training_date d
           where d.club_id = $1 and d.team_id = $2 and d.state = 'on' and d.starts_at > $3
           order by d.local_date, d.date_id`,
    values: [db.clubId, teamId, at],
  })
}

/** Separate days on which each stage was practised, from reports that stand, or was planned on a date that has begun. */
async function countPractisedDays(db: ClubDb, teamId: string): Promise<ReadonlyMap<string, number>> {
  const rows = await db.sql.rows<{ stage_id: string; days: number }>({
    name: 'count-practised-days',
    text: `select s.stage_id, count(distinct r.date_id)::int as days
           from stage_done s join record r using (club_id, record_id)
           where s.club_id = $1 and s.team_id = $2 and s.stands group by s.stage_id`,
    values: [db.clubId, teamId],
  })
  return new Map(rows.map(({ stage_id, days }) => [stage_id, days]))
}

function listOpenRows(db: ClubDb, dateIds: readonly string[]): Promise<readonly OpenRow[]> {
  return db.sql.rows<OpenRow>({
    name: 'list-open-plans',
    text: `select planned_id, date_id, stage_id, minutes from stage_planned
           where club_id = $1 and date_id = any($2) and closed_at is null order by planned_id`,
    values: [db.clubId, dateIds],
  })
}

async function closeRows({ db, at }: CommandContext, rows: readonly OpenRow[]): Promise<void> {
  await db.sql.changed({
    name: 'close-plans',
    text: 'update stage_planned set closed_at = $3 where club_id = $1 and planned_id = any($2)',
    values: [db.clubId, rows.map(({ planned_id }) => planned_id), at],
  })
}

async function insertRows(
  { db, entryId }: CommandContext,
  team: TeamOnly,
  rows: readonly PlannedStage[],
  dates: readonly FutureDateRow[],
): Promise<void> {
  const dateOf = new Map(dates.map((date) => [date.date_id, date]))
  await db.sql.changed({
    name: 'insert-plans',
    text: `insert into stage_planned (club_id, planned_id, season_id, team_id, date_id, week, stage_id, minutes, first)
           select $1, id, $2, $3, date_id, week, stage_id, minutes, first
           from unnest($4::uuid[], $5::uuid[], $6::date[], $7::uuid[], $8::smallint[], $9::boolean[])
             as new (id, date_id, week, stage_id, minutes, first)`,
    values: [
      db.clubId,
      team.seasonId,
      team.teamId,
      rows.map(({ dateId, stageId }) => derivedId('stage-planned', entryId, dateId, stageId)),
      rows.map(({ dateId }) => dateId),
      rows.map(({ dateId }) => dateOf.get(dateId)!.week),
      rows.map(({ stageId }) => stageId),
      rows.map(({ minutes }) => minutes),
      rows.map(({ dateId }) => !dateOf.get(dateId)!.planned_before),
    ],
  })
}
