import { expect, test } from 'vitest'
import { listSlotDates } from './slot-dates'

const slot = { slotId: '01900000-0000-7000-8000-000000000001', weekday: 2, localStart: '17:30', minutes: 75 }

test('a weekly slot keeps its clock time over the end of summer time', () => {
  const dates = listSlotDates(slot, 'Europe/London', '2026-10-19', '2026-11-01')
  expect(dates.map(({ localDate, startsAt }) => [localDate, startsAt.toISOString()])).toEqual([
    ['2026-10-20', '2026-10-20T16:30:00.000Z'],
    ['2026-10-27', '2026-10-27T17:30:00.000Z'],
  ])
})

test('a time that the change of clocks skips moves on by the skipped hour', () => {
  // Clocks in New York went from 02:00 to 03:00 on Sunday 8 March 2026.
  const night = { ...slot, weekday: 7, localStart: '02:30' }
  const [date] = listSlotDates(night, 'America/New_York', '2026-03-08', '2026-03-08')
  expect(date!.startsAt.toISOString()).toBe('2026-03-08T07:30:00.000Z')
})

test('both ends are included, weeks begin on Monday, and ids are the same every time', () => {
  const once = listSlotDates(slot, 'Europe/London', '2026-09-01', '2026-09-15')
  expect(once.map(({ localDate, week }) => [localDate, week])).toEqual([
    ['2026-09-01', '2026-08-31'],
    ['2026-09-08', '2026-09-07'],
    ['2026-09-15', '2026-09-14'],
  ])
  expect(listSlotDates(slot, 'Europe/London', '2026-09-01', '2026-09-15')).toEqual(once)
  expect(new Set(once.map(({ dateId }) => dateId)).size).toBe(3)
  expect(listSlotDates(slot, 'Europe/London', '2026-09-02', '2026-09-07')).toEqual([])
})
