import type { Club } from '@espalier/contract/places'
import type { ClubDb } from '../../db/with-club'

type ClubRow = {
  readonly name: string
  readonly zone: string
  readonly demo: boolean
  readonly settings: Club['settings']
  readonly version: number
}

export async function findClub(db: ClubDb): Promise<Club | null> {
  const rows = await db.sql.rows<ClubRow>({
    name: 'find-club',
    text: 'select name, zone, demo, settings, version from club where club_id = $1',
    values: [db.clubId],
  })
  const row = rows[0]
  return row === undefined ? null : { clubId: db.clubId, ...row }
}

/** The first lock of all, of commands that come one after the other in the whole club. */
export async function lockClub(db: ClubDb): Promise<void> {
  await db.sql.rows({
    name: 'lock-club',
    text: 'select 1 from club where club_id = $1 for no key update',
    values: [db.clubId],
  })
}
