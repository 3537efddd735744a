import type { ClubDb } from '../../db/with-club'

export type PlayerRow = {
  readonly player_id: string
  readonly shirt: number | null
  readonly home: string | null
  readonly stretch: string | null
  readonly goalkeeper: 'yes' | 'sometimes' | 'no'
  readonly foot: 'left' | 'right' | 'both'
  readonly version: number
  readonly left_at: string | null
  readonly name_sealed: Buffer | null
  readonly wrapped_key: Buffer | null
}

export function listPlayers(db: ClubDb, teamId: string): Promise<readonly PlayerRow[]> {
  return db.sql.rows<PlayerRow>({
    name: 'list-players',
    text: `select p.player_id, p.shirt, p.home, p.stretch, p.goalkeeper, p.foot, p.version, p.left_at,
             p.name_sealed, k.wrapped_key
           from player p left join subject_key k using (club_id, player_id)
           where p.club_id = $1 and p.team_id = $2 and p.left_at is null
           order by p.shirt nulls last, p.player_id`,
    values: [db.clubId, teamId],
  })
}

/** Whether a child is or was in the squad of a team that stands. */
export async function hasPlayer(db: ClubDb, teamId: string, playerId: string): Promise<boolean> {
  const rows = await db.sql.rows({
    name: 'has-player',
    text: `select 1 from player p join team t using (club_id, team_id)
           where p.club_id = $1 and p.team_id = $2 and p.player_id = $3 and t.retired_at is null`,
    values: [db.clubId, teamId, playerId],
  })
  return rows.length > 0
}

export async function lockPlayer(db: ClubDb, teamId: string, playerId: string): Promise<PlayerRow | null> {
  const rows = await db.sql.rows<PlayerRow>({
    name: 'lock-player',
    text: `select p.player_id, p.shirt, p.home, p.stretch, p.goalkeeper, p.foot, p.version, p.left_at,
             p.name_sealed, k.wrapped_key
           from player p left join subject_key k using (club_id, player_id)
           where p.club_id = $1 and p.team_id = $2 and p.player_id = $3 for no key update of p`,
    values: [db.clubId, teamId, playerId],
  })
  return rows[0] ?? null
}
