import type { Space } from '@espalier/domain/pitch'
import type { ClubDb } from '../../db/with-club'

export type SpaceRow = { readonly space_id: string; readonly version: number; readonly doc: Space }

/** Spaces of the club, or those where the given teams train. */
export function listSpaces(db: ClubDb, teamIds: readonly string[] | null): Promise<readonly SpaceRow[]> {
  return db.sql.rows<SpaceRow>({
    name: 'list-spaces',
    text: `select s.space_id, s.version, s.doc from space s
           where s.club_id = $1 and s.retired_at is null and ($2::uuid[] is null
             or exists (select from training_slot t
                        where t.club_id = s.club_id and t.space_id = s.space_id and t.team_id = any($2))
             or exists (select from training_date d
                        where d.club_id = s.club_id and d.space_id = s.space_id and d.team_id = any($2)))
           order by s.venue, s.name, s.space_id`,
    values: [db.clubId, teamIds],
  })
}

export async function findSpace(db: ClubDb, spaceId: string): Promise<SpaceRow | null> {
  const rows = await db.sql.rows<SpaceRow>({
    name: 'find-space',
    text: 'select space_id, version, doc from space where club_id = $1 and space_id = $2 and retired_at is null',
    values: [db.clubId, spaceId],
  })
  return rows[0] ?? null
}

export async function lockSpace(db: ClubDb, spaceId: string): Promise<SpaceRow | null> {
  const rows = await db.sql.rows<SpaceRow>({
    name: 'lock-space',
    text: `select space_id, version, doc from space
           where club_id = $1 and space_id = $2 and retired_at is null for no key update`,
    values: [db.clubId, spaceId],
  })
  return rows[0] ?? null
}
