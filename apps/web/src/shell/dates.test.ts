import { describe, expect, test } from 'vitest'
import { dayWords, instantWords, mondayOf, todayIn } from './dates'

describe('dates on a page', () => {
  test('name the day they stand for, wherever the reader is', () => {
    expect(dayWords('2026-10-06')).toBe('Tuesday 6 October')
  })

  test.each([
    ['2026-11-23', '2026-11-23'],
    ['2026-11-25', '2026-11-23'],
    ['2026-11-29', '2026-11-23'],
    ['2026-03-01', '2026-02-23'],
  ])('the week of %s begins on %s', (day, monday) => {
    expect(mondayOf(day)).toBe(monday)
  })

  test('today is the day in the club zone, not in the server zone', () => {
    expect(todayIn('Pacific/Auckland', new Date('2026-11-25T20:00:00Z'))).toBe('2026-11-26')
    expect(todayIn('America/Denver', new Date('2026-11-25T05:00:00Z'))).toBe('2026-11-24')
  })

  test('an instant is written in the club zone', () => {
    expect(instantWords('2026-10-06T17:05:00.000Z', 'Europe/London')).toBe('6 October 2026, 18:05')
  })
})
