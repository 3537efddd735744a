const DAY = new Intl.DateTimeFormat('en-GB', { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' })
const SHORT_DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' })
const WITH_YEAR = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' })

/** A calendar day has no zone: it is written as the day it names, wherever the reader is. */
const noonOf = (localDate: string): Date => new Date(`${localDate}T12:00:00Z`)

/** "Tuesday 6 October" */
export function dayWords(localDate: string): string {
  return DAY.format(noonOf(localDate)).replace(',', '')
}

/** "6 Oct", for column heads. */
export function shortDayWords(localDate: string): string {
  return SHORT_DAY.format(noonOf(localDate))
}

/** "6 October 2026" */
export function dateWords(localDate: string): string {
  return WITH_YEAR.format(noonOf(localDate))
}

/** An instant as the reader's page shows it, in the club's zone: "6 October 2026, 18:05". */
export function instantWords(instant: string, zone: string): string {
  const format = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeStyle: 'short', timeZone: zone })
  return format.format(new Date(instant)).replace(' at ', ', ')
}

const DAY_MILLISECONDS = 86_400_000

/** The Monday of a day's week, as weeks are counted in the record. */
export function mondayOf(localDate: string): string {
  const noon = noonOf(localDate)
  const sinceMonday = (noon.getUTCDay() + 6) % 7
  return new Date(noon.getTime() - sinceMonday * DAY_MILLISECONDS).toISOString().slice(0, 10)
}

/** Today's date in the club's zone, as YYYY-MM-DD. */
export function todayIn(zone: string, now: Date = new Date()): string {
  return new Intl.DateTimeFormat('sv-SE', { timeZone: zone }).format(now)
}
