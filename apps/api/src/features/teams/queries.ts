import type { Team } from '@espalier/contract/places'
import type { FormatId } from '@espalier/domain/formats'
import type { ClubDb } from '../../db/with-club'

export type TeamRow = {
  readonly team_id: string
  readonly season_id: string
  readonly name: string
  readonly age_group: string
  readonly category: 'girls' | 'boys' | 'mixed'
  readonly format_id: FormatId
  readonly version: number
  readonly curriculum_id: string | null
  readonly number: number | null
  readonly from_date: string | null
  readonly squad_size: number
  readonly reach: Team['reach']
}

/** Teams with what each follows on a day, and how many children it has. Null asks for all teams. */
export function listTeams(db: ClubDb, teamIds: readonly string[] | null, day: string): Promise<readonly TeamRow[]> {
  return db.sql.rows<TeamRow>({
    name: 'list-teams',
    text: `select t.team_id, t.season_id, t.name, t.age_group, t.category, t.format_id, t.version,
             a.curriculum_id, a.number, a.from_date,
             (select count(*)::int from player p
              where p.club_id = t.club_id and p.team_id = t.team_id and p.left_at is null) as squad_size,
             (select json_build_object('strongFootMm', r.strong_foot_mm, 'otherFootMm', r.other_foot_mm,
                       'measuredOn', r.measured_on, 'version', r.version)
              from team_reach r where r.club_id = t.club_id and r.team_id = t.team_id) as reach
           from team t
           left join lateral (
             select curriculum_id, number, from_date from adoption
             where club_id = t.club_id and team_id = t.team_id and from_date <= $3
             order by from_date desc, ordinal desc limit 1) a on true
           where t.club_id = $1 and t.retired_at is null and ($2::uuid[] is null or t.team_id = any($2))
           order by t.name, t.team_id`,
    values: [db.clubId, teamIds, day],
  })
}

/** What was measured of a team, or null. Who measures holds the team, since a first measuring has no row of its own. */
export async function findReach(db: ClubDb, teamId: string): Promise<NonNullable<Team['reach']> | null> {
  const rows = await db.sql.rows<NonNullable<Team['reach']>>({
    name: 'find-reach',
    text: `select strong_foot_mm as "strongFootMm", other_foot_mm as "otherFootMm", measured_on as "measuredOn", version
           from team_reach where club_id = $1 and team_id = $2`,
    values: [db.clubId, teamId],
  })
  return rows[0] ?? null
}

export type TeamOnly = {
  readonly teamId: string
  readonly seasonId: string
  readonly ageGroup: string
  readonly formatId: FormatId
}

type TeamOnlyRow = { team_id: string; season_id: string; age_group: string; format_id: FormatId }

export async function findTeam(db: ClubDb, teamId: string): Promise<TeamOnly | null> {
  return teamOf(
    await db.sql.rows<TeamOnlyRow>({
      name: 'find-team',
      text: `select team_id, season_id, age_group, format_id from team
             where club_id = $1 and team_id = $2 and retired_at is null`,
      values: [db.clubId, teamId],
    }),
  )
}

/** Holds the team: two commands about its dates, squad or adoption come one after the other. */
export async function lockTeam(db: ClubDb, teamId: string): Promise<TeamOnly | null> {
  return teamOf(
    await db.sql.rows<TeamOnlyRow>({
      name: 'lock-team',
      text: `select team_id, season_id, age_group, format_id from team
             where club_id = $1 and team_id = $2 and retired_at is null for no key update`,
      values: [db.clubId, teamId],
    }),
  )
}

function teamOf(rows: readonly TeamOnlyRow[]): TeamOnly | null {
  const row = rows[0]
  if (row === undefined) return null
  return { teamId: row.team_id, seasonId: row.season_id, ageGroup: row.age_group, formatId: row.format_id }
}
