import { compareIds, type LocalDate, localDate } from '@espalier/domain/quantities'
import { Temporal } from 'temporal-polyfill'

/** A season or a slot lasts a little more than a year at most (habit: common practice, no source); the database agrees. */
export const SPAN_DAYS_MAX = 400

/** A calendar day as Prisma reads it (midnight UTC), as the text it is. */
export function localDateOf(day: Date): LocalDate {
  return localDate(day.toISOString().slice(0, 10))
}

/** Whether the text names a day that the calendar has: 2026-02-29 reads like one and is none. */
export function isRealDay(text: string): boolean {
  try {
    return Temporal.PlainDate.from(text, { overflow: 'reject' }).toString() === text
  } catch {
    return false
  }
}

/** The calendar day at an instant in the club's zone. */
export function dayInZone(milliseconds: number, zone: string): LocalDate {
  const at = Temporal.Instant.fromEpochMilliseconds(milliseconds).toZonedDateTimeISO(zone)
  return localDate(at.toPlainDate().toString())
}

/** The clock's hours and minutes at an instant in the club's zone, as HH:MM. */
export function timeInZone(milliseconds: number, zone: string): string {
  const at = Temporal.Instant.fromEpochMilliseconds(milliseconds).toZonedDateTimeISO(zone)
  return at.toPlainTime().toString({ smallestUnit: 'minute' })
}

/** The Monday of a day's week (ISO 8601). */
export function mondayOf(day: string): LocalDate {
  const date = Temporal.PlainDate.from(day)
  return localDate(date.subtract({ days: date.dayOfWeek - 1 }).toString())
}

/** Monday is 1 (ISO 8601). */
export function weekdayOf(day: string): number {
  return Temporal.PlainDate.from(day).dayOfWeek
}

export function addDays(day: string, days: number): LocalDate {
  return localDate(Temporal.PlainDate.from(day).add({ days }).toString())
}

/** Whether this is the name of a time zone that the service knows. */
export function isZone(name: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name)
    return /^[A-Za-z]/.test(name)
  } catch {
    return false
  }
}

export function laterDay(a: string, b: string): string {
  return compareIds(a, b) < 0 ? b : a
}

export function earlierDay(a: string, b: string): string {
  return compareIds(a, b) < 0 ? a : b
}
