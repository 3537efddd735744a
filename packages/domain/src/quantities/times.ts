import { assert } from './assert'
import type { Brand } from './brand'

export type Seconds = Brand<number, 'Seconds'>
export type Milliseconds = Brand<number, 'Milliseconds'>
/** Whole minutes of an evening. */
export type Minutes = Brand<number, 'Minutes'>
/** An instant as whole milliseconds since 1970-01-01T00:00Z; the domain never reads a clock. */
export type Instant = Brand<number, 'Instant'>
/** A calendar day in the club's zone, as YYYY-MM-DD; zones are resolved at the edge. */
export type LocalDate = Brand<string, 'LocalDate'>

export function seconds(value: number): Seconds {
  assert(Number.isFinite(value), 'a duration in seconds must be finite')
  return value as Seconds
}

export function milliseconds(value: number): Milliseconds {
  assert(Number.isSafeInteger(value), 'a duration in milliseconds must be a whole number')
  return value as Milliseconds
}

/** Rounds to the nearest whole millisecond: values meet their limits only after this. */
export function millisecondsOf(duration: Seconds): Milliseconds {
  return milliseconds(Math.round(duration * 1000))
}

export function minutes(value: number): Minutes {
  assert(Number.isSafeInteger(value) && value >= 0, 'minutes must be a whole number, not negative')
  return value as Minutes
}

export function instant(value: number): Instant {
  assert(Number.isSafeInteger(value), 'an instant must be whole milliseconds')
  return value as Instant
}

const LOCAL_DATE = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/

export function localDate(value: string): LocalDate {
  assert(LOCAL_DATE.test(value), 'a local date must read YYYY-MM-DD')
  return value as LocalDate
}
