import { instant, localDate, minutes } from '@espalier/domain/quantities'
import type { KitDate } from '@espalier/domain/session'
import { expect, test } from 'vitest'
import { chooseDate, findUnreported } from './choose-date'

const HOUR = 60 * 60_000
const noon = Date.UTC(2026, 9, 6, 12)

function date(dateId: string, day: number, changed: Partial<KitDate> = {}): KitDate {
  return {
    dateId,
    startsAt: instant(Date.UTC(2026, 9, day, 16, 30)),
    minutes: minutes(75),
    localDate: localDate(`2026-10-${String(day).padStart(2, '0')}`),
    localStart: '17:30',
    spaceId: null,
    state: 'on',
    reported: false,
    ...changed,
  }
}

const dates = [date('next', 8), date('today', 6), date('last', 1)]

test('today comes before every other evening', () => {
  expect(chooseDate(dates, '2026-10-06', noon, null)).toMatchObject({ date: { dateId: 'today' }, when: 'today' })
})

test('an evening that has just ended is still tonight, for its report', () => {
  expect(chooseDate(dates, '2026-10-06', noon + 8 * HOUR, null)?.date.dateId).toBe('today')
})

test('without one today the next is shown, and that it is later', () => {
  expect(chooseDate(dates, '2026-10-07', noon + 24 * HOUR, null)).toMatchObject({
    date: { dateId: 'next' },
    when: 'later',
  })
})

test('a cancelled evening is passed over', () => {
  const cancelled = [date('today', 6, { state: 'cancelled' }), date('next', 8)]
  expect(chooseDate(cancelled, '2026-10-06', noon, null)?.date.dateId).toBe('next')
})

test('of two evenings today the one not over comes first', () => {
  const morning = date('morning', 6, { startsAt: instant(Date.UTC(2026, 9, 5, 23)) })
  expect(chooseDate([date('evening', 6), morning], '2026-10-06', noon, null)?.date.dateId).toBe('evening')
})

test('a named evening is shown whenever it is; an unknown name is not', () => {
  expect(chooseDate(dates, '2026-10-06', noon, 'last')).toMatchObject({ date: { dateId: 'last' }, when: 'past' })
  expect(chooseDate(dates, '2026-10-06', noon, 'other')?.date.dateId).toBe('today')
})

test('a kit whose evenings are all over shows the last one, an empty kit none', () => {
  expect(chooseDate([date('last', 1)], '2026-10-06', noon, null)?.date.dateId).toBe('last')
  expect(chooseDate([], '2026-10-06', noon, null)).toBeNull()
})

test('the last evening without a report is remembered, but not the one shown nor a reported one', () => {
  expect(findUnreported(dates, noon, 'today')?.dateId).toBe('last')
  expect(findUnreported(dates, noon, 'last')).toBeNull()
  expect(findUnreported([date('last', 1, { reported: true })], noon, null)).toBeNull()
})
