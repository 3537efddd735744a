import type { RecordRow as RecordOnWire } from '@espalier/contract/records'
import { localDate, minutes } from '@espalier/domain/quantities'
import * as z from 'zod/mini'
import type { RecordRow } from './queries'
import { storedReport } from './stored-report'

export function recordBodyOf(row: RecordRow): RecordOnWire {
  const { stages, changes } = z.parse(storedReport, row.doc)
  return {
    recordId: row.record_id,
    dateId: row.date_id,
    teamId: row.team_id,
    localDate: localDate(row.local_date),
    turnout: row.turnout,
    guests: row.guests,
    minutes: minutes(row.minutes),
    stages,
    author: row.author,
    secondAdult: row.second_adult,
    reportedAt: row.reported_at.toISOString(),
    late: row.reported_late,
    standing: row.standing,
    changes,
    entryId: row.entry_id,
    entrySeq: row.entry_seq,
  }
}
