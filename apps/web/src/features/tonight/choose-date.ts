import type { KitDate } from '@espalier/domain/session'

/** So long after its end an evening is still tonight's: there is a report to write. */
const AFTERWARDS_MS = 6 * 60 * 60_000

export type ChosenDate = {
  readonly date: KitDate
  readonly when: 'today' | 'later' | 'past'
}

/**
 * The evening a coach means: the one named, else today's that is not over for long, else the next one. A cancelled
 * evening is nobody's. Null where the kit holds none. `today` is the day in the club's zone.
 */
export function chooseDate(
  dates: readonly KitDate[],
  today: string,
  nowMs: number,
  named: string | null,
): ChosenDate | null {
  const held = dates.filter((date) => date.state !== 'cancelled').toSorted(byStart)
  const asked = held.find((date) => date.dateId === named)
  const isOpen = (date: KitDate) => nowMs <= endOf(date) + AFTERWARDS_MS
  const todays = held.filter((date) => date.localDate === today)
  const date =
    asked ?? todays.find(isOpen) ?? held.find((each) => each.startsAt > nowMs) ?? todays.at(-1) ?? held.at(-1)
  return date === undefined ? null : { date, when: whenIs(date, today) }
}

/** The last evening gone by without a report; what the coach is reminded of, without being sent there. */
export function findUnreported(dates: readonly KitDate[], nowMs: number, shown: string | null): KitDate | null {
  const over = dates.filter(
    (date) => date.state !== 'cancelled' && !date.reported && endOf(date) < nowMs && date.dateId !== shown,
  )
  return over.toSorted(byStart).at(-1) ?? null
}

export function endOf(date: KitDate): number {
  return date.startsAt + date.minutes * 60_000
}

function whenIs(date: KitDate, today: string): ChosenDate['when'] {
  if (date.localDate === today) return 'today'
  return date.localDate > today ? 'later' : 'past'
}

function byStart(a: KitDate, b: KitDate): number {
  return a.startsAt - b.startsAt || (a.dateId < b.dateId ? -1 : 1)
}
