import type { ClubDb } from '../../db/with-club'

export type SlotRow = {
  readonly slot_id: string
  readonly space_id: string | null
  readonly weekday: number
  readonly local_start: string
  readonly minutes: number
  readonly valid_from: string
  readonly valid_to: string
}

export function listSlots(db: ClubDb, teamId: string): Promise<readonly SlotRow[]> {
  return db.sql.rows<SlotRow>({
    name: 'list-slots',
    text: `select slot_id, space_id, weekday, local_start, minutes, valid_from, valid_to from training_slot
           where club_id = $1 and team_id = $2 order by weekday, local_start, slot_id`,
    values: [db.clubId, teamId],
  })
}

export type DateRow = {
  readonly date_id: string
  readonly starts_at: Date
  readonly ends_at: Date
  readonly local_date: string
  readonly space_id: string | null
  readonly state: 'on' | 'cancelled' | 'moved'
  readonly reported: boolean
}

export function listDates(db: ClubDb, teamId: string): Promise<readonly DateRow[]> {
  return db.sql.rows<DateRow>({
    name: 'list-dates',
    text: `select d.date_id, d.starts_at, d.ends_at, d.local_date, d.space_id, d.state,
             exists (select from record r where r.club_id = d.club_id and r.date_id = d.date_id
                     and r.standing = 'stands') as reported
           from training_date d where d.club_id = $1 and d.team_id = $2 order by d.starts_at, d.date_id`,
    values: [db.clubId, teamId],
  })
}
