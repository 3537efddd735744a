import type { RecordRow as RecordOnWire } from '@espalier/contract/records'
import type { ClubDb } from '../../db/with-club'

export type RecordRow = {
  readonly record_id: string
  readonly date_id: string
  readonly team_id: string
  readonly local_date: string
  readonly turnout: number
  readonly guests: number
  readonly minutes: number
  readonly author: string
  readonly second_adult: string | null
  readonly reported_at: Date
  readonly reported_late: boolean
  readonly standing: RecordOnWire['standing']
  readonly doc: unknown
  readonly entry_id: string
  readonly entry_seq: number
}

const COLUMNS = `r.record_id, r.date_id, r.team_id, d.local_date, r.turnout, r.guests, r.minutes,
  a.display_name as author, s.display_name as second_adult, e.at as reported_at, r.reported_late, r.standing, r.doc,
  r.entry_id, e.seq as entry_seq`
const JOINED = `record r
  join training_date d using (club_id, date_id)
  join membership a on a.club_id = r.club_id and a.member_id = r.author_id
  left join membership s on s.club_id = r.club_id and s.member_id = (r.doc ->> 'secondAdult')::uuid
  join ledger_entry e on e.club_id = r.club_id and e.entry_id = r.entry_id`

/** A team's reports, the latest evening first; superseded and rival ones stand beside them and say so. */
export function listRecords(db: ClubDb, teamId: string): Promise<readonly RecordRow[]> {
  return db.sql.rows<RecordRow>({
    name: 'list-records',
    text: `select ${COLUMNS} from ${JOINED} where r.club_id = $1 and r.team_id = $2
           order by d.starts_at desc, e.seq desc`,
    values: [db.clubId, teamId],
  })
}

export async function findRecord(db: ClubDb, recordId: string): Promise<RecordRow | null> {
  const rows = await db.sql.rows<RecordRow>({
    name: 'find-record',
    text: `select ${COLUMNS} from ${JOINED} where r.club_id = $1 and r.record_id = $2`,
    values: [db.clubId, recordId],
  })
  return rows[0] ?? null
}

/** The reports behind one cell of planned and done. */
export function listRecordsOfCell(
  db: ClubDb,
  cell: { readonly seasonId: string; readonly teamId: string; readonly stageId: string; readonly week: string },
): Promise<readonly RecordRow[]> {
  return db.sql.rows<RecordRow>({
    name: 'list-records-of-cell',
    text: `select ${COLUMNS} from ${JOINED}
           join stage_done x on x.club_id = r.club_id and x.record_id = r.record_id
           where r.club_id = $1 and x.season_id = $2 and x.team_id = $3 and x.stage_id = $4 and x.week = $5 and x.stands
           order by d.starts_at, e.seq`,
    values: [db.clubId, cell.seasonId, cell.teamId, cell.stageId, cell.week],
  })
}
