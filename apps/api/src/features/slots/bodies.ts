import type { Slot, TrainingDate } from '@espalier/contract/places'
import { localDate, minutes } from '@espalier/domain/quantities'
import { timeInZone } from '../../clock/local-dates'
import type { DateRow, SlotRow } from './queries'

export function slotBodyOf(row: SlotRow): Slot {
  return {
    slotId: row.slot_id,
    spaceId: row.space_id,
    weekday: row.weekday,
    localStart: row.local_start.slice(0, 'HH:MM'.length),
    minutes: row.minutes,
    validFrom: localDate(row.valid_from),
    validTo: localDate(row.valid_to),
  }
}

export function dateBodyOf(row: DateRow, zone: string): TrainingDate {
  return {
    dateId: row.date_id,
    localDate: localDate(row.local_date),
    localStart: timeInZone(row.starts_at.getTime(), zone),
    minutes: minutes(Math.round((row.ends_at.getTime() - row.starts_at.getTime()) / 60_000)),
    spaceId: row.space_id,
    state: row.state,
    reported: row.reported,
  }
}
