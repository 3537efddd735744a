import { Temporal } from 'temporal-polyfill'
import { derivedId } from '../../clock/derived-id'
import { mondayOf } from '../../clock/local-dates'

export type SlotPattern = {
  readonly slotId: string
  readonly weekday: number
  readonly localStart: string
  readonly minutes: number
}

export type SlotDate = {
  readonly dateId: string
  readonly startsAt: Date
  readonly endsAt: Date
  readonly localDate: string
  readonly week: string
}

/**
 * The evenings of a weekly slot between two days, both included. The clock on the wall stays the same over a change of
 * the club's clocks; a time that such a change skips moves on by the skipped hour.
 */
export function listSlotDates(slot: SlotPattern, zone: string, firstDay: string, lastDay: string): readonly SlotDate[] {
  const dates: SlotDate[] = []
  const last = Temporal.PlainDate.from(lastDay)
  const time = Temporal.PlainTime.from(slot.localStart)
  let day = Temporal.PlainDate.from(firstDay)
  day = day.add({ days: (slot.weekday - day.dayOfWeek + 7) % 7 })
  while (Temporal.PlainDate.compare(day, last) <= 0) {
    const start = day.toZonedDateTime({ timeZone: zone, plainTime: time }).epochMilliseconds
    const localDate = day.toString()
    dates.push({
      dateId: derivedId('training-date', slot.slotId, localDate),
      startsAt: new Date(start),
      endsAt: new Date(start + slot.minutes * 60_000),
      localDate,
      week: mondayOf(localDate),
    })
    day = day.add({ days: 7 })
  }
  return dates
}
