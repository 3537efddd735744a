import { localDate } from '@espalier/domain/quantities'
import { expect, test } from 'vitest'
import { addedWords } from './add-slot-form'

const season = { firstDay: localDate('2026-09-01'), lastDay: localDate('2026-12-15') }

test('a slot inside the season is simply added', () => {
  expect(addedWords(season, '2026-09-01', '2026-12-15')).toBe('The slot is added, and its dates with it.')
})

test.each([
  ['2026-08-31', '2026-12-15'],
  ['2026-09-01', '2026-12-16'],
])('days outside the season are named, not refused: %s to %s', (from, until) => {
  expect(addedWords(season, from, until)).toContain('1 September 2026 to 15 December 2026')
})
