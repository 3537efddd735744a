import type { DoneRow, PlannedRow } from '@espalier/domain/coverage'
import type { ClubDb } from '../../db/with-club'

export type SeasonRow = {
  readonly season_id: string
  readonly name: string
  readonly first_day: string
  readonly last_day: string
}

export async function findSeason(db: ClubDb, seasonId: string): Promise<SeasonRow | null> {
  const rows = await db.sql.rows<SeasonRow>({
    name: 'find-season',
    text: 'select season_id, name, first_day, last_day from season where club_id = $1 and season_id = $2',
    values: [db.clubId, seasonId],
  })
  return rows[0] ?? null
}

export type CoverageTeamRow = { readonly team_id: string; readonly name: string; readonly age_group: string }

export function listCoverageTeams(
  db: ClubDb,
  seasonId: string,
  teamIds: readonly string[] | null,
): Promise<readonly CoverageTeamRow[]> {
  return db.sql.rows<CoverageTeamRow>({
    name: 'list-coverage-teams',
    text: `select team_id, name, age_group from team
           where club_id = $1 and season_id = $2 and retired_at is null and ($3::uuid[] is null or team_id = any($3))
           order by name, team_id`,
    values: [db.clubId, seasonId, teamIds],
  })
}

/** What was planned first, and the plan that holds: the one open now. Rows of past dates are never closed. */
export function listPlanned(db: ClubDb, seasonId: string, teamIds: readonly string[]): Promise<readonly PlannedRow[]> {
  return db.sql.rows<PlannedRow>({
    name: 'list-planned',
    text: `select team_id as "teamId", stage_id as "stageId", week, minutes, first, closed_at is null as holds
           from stage_planned
           where club_id = $1 and season_id = $2 and team_id = any($3) and (closed_at is null or first)`,
    values: [db.clubId, seasonId, teamIds],
  })
}

export function listDone(db: ClubDb, seasonId: string, teamIds: readonly string[]): Promise<readonly DoneRow[]> {
  return db.sql.rows<DoneRow>({
    name: 'list-done',
    text: `select s.team_id as "teamId", s.stage_id as "stageId", s.week, s.minutes, s.record_id as "recordId",
             r.reported_late as late
           from stage_done s join record r using (club_id, record_id)
           where s.club_id = $1 and s.season_id = $2 and s.team_id = any($3) and s.stands`,
    values: [db.clubId, seasonId, teamIds],
  })
}

export type CoverageStageRow = { readonly stage_id: string; readonly title: string; readonly curriculum: string }

export function listCoverageStages(db: ClubDb, stageIds: readonly string[]): Promise<readonly CoverageStageRow[]> {
  return db.sql.rows<CoverageStageRow>({
    name: 'list-coverage-stages',
    text: `select s.stage_id, s.title, c.name as curriculum
           from stage s join curriculum c using (club_id, curriculum_id)
           left join lateral (
             select ordinal from version_stage v where v.club_id = s.club_id and v.stage_id = s.stage_id
             order by v.number desc limit 1) latest on true
           where s.club_id = $1 and s.stage_id = any($2)
           order by c.name, c.curriculum_id, latest.ordinal, s.stage_id`,
    values: [db.clubId, stageIds],
  })
}
