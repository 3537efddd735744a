import type { ClubDb } from '../../db/with-club'

export type EveningRow = {
  readonly date_id: string
  readonly team_id: string
  readonly season_id: string
  readonly space_id: string | null
  readonly starts_at: Date
  readonly ends_at: Date
  readonly local_date: string
  readonly week: string
  readonly state: 'on' | 'cancelled' | 'moved'
}

/** Holds the evening: two phones that speak of it are heard one after the other. */
export async function lockEvening(db: ClubDb, teamId: string, dateId: string): Promise<EveningRow | null> {
  const rows = await db.sql.rows<EveningRow>({
    name: 'lock-evening',
    text: `select date_id, team_id, season_id, space_id, starts_at, ends_at, local_date, week, state
           from training_date
           where club_id = $1 and team_id = $2 and date_id = $3 for no key update`,
    values: [db.clubId, teamId, dateId],
  })
  return rows[0] ?? null
}

/** Everybody who was ever in the squad: a report of last month may name a child who has left since. */
export async function listSquadIds(db: ClubDb, teamId: string): Promise<ReadonlySet<string>> {
  const rows = await db.sql.rows<{ player_id: string }>({
    name: 'list-squad-ids',
    text: 'select player_id from player where club_id = $1 and team_id = $2',
    values: [db.clubId, teamId],
  })
  return new Set(rows.map(({ player_id }) => player_id))
}

/** Stages of the version in force on a day, or null where the team followed none. */
export async function listFollowedStages(
  db: ClubDb,
  teamId: string,
  day: string,
): Promise<{ readonly curriculumId: string; readonly number: number; readonly stageIds: readonly string[] } | null> {
  const rows = await db.sql.rows<{ curriculum_id: string; number: number; stage_ids: string[] }>({
    name: 'list-followed-stages',
    text: `select a.curriculum_id, a.number, array(
             select stage_id from version_stage s
             where s.club_id = a.club_id and s.curriculum_id = a.curriculum_id and s.number = a.number
             order by ordinal) as stage_ids
           from adoption a where a.club_id = $1 and a.team_id = $2 and a.from_date <= $3
           order by a.from_date desc, a.ordinal desc limit 1`,
    values: [db.clubId, teamId, day],
  })
  const row = rows[0]
  return row === undefined ? null : { curriculumId: row.curriculum_id, number: row.number, stageIds: row.stage_ids }
}
