import type { EquipmentKind } from '@espalier/domain/session'
import type { ClubDb } from '../../db/with-club'

/** The owner's key in the table: the club's own store, or one team's bag. */
export const CLUB_STORE = 'club'

export type EquipmentRow = {
  readonly owner_key: string
  readonly kind: EquipmentKind
  readonly count: number
  readonly version: number
}

/** What some teams' bags hold, or, for null, everything of the club. */
export function listEquipment(db: ClubDb, teamIds: readonly string[] | null): Promise<readonly EquipmentRow[]> {
  return db.sql.rows<EquipmentRow>({
    name: 'list-equipment',
    text: `select owner_key, kind, count, version from equipment
           where club_id = $1 and ($2::text[] is null or owner_key = any($2)) order by owner_key, kind`,
    values: [db.clubId, teamIds],
  })
}

/** What one owner has. Who counts holds a lock on the owner, since a first counting has no row of its own to lock. */
export function listEquipmentOf(db: ClubDb, ownerKey: string): Promise<readonly EquipmentRow[]> {
  return db.sql.rows<EquipmentRow>({
    name: 'list-equipment-of',
    text: 'select owner_key, kind, count, version from equipment where club_id = $1 and owner_key = $2 order by kind',
    values: [db.clubId, ownerKey],
  })
}
