import type { Coverage } from '@espalier/contract/coverage'
import { localDate } from '@espalier/domain/quantities'
import { describe, expect, test } from 'vitest'
import { trellisesOf } from './team-trellis'

const week = (day: string) => localDate(day)
const cell = (teamId: string, stageId: string, day: string) => ({
  teamId,
  stageId,
  week: week(day),
  plannedMinutes: 25,
  firstPlannedMinutes: 25,
  doneMinutes: 20,
  records: 1,
  late: 0,
})

const coverage: Coverage = {
  season: { seasonId: 's', name: 'Autumn', firstDay: week('2026-09-01'), lastDay: week('2026-12-01') },
  weeks: [week('2026-08-31'), week('2026-09-07'), week('2026-09-14'), week('2026-09-21')],
  teams: [
    { teamId: 'larks', name: 'U10 Larks', ageGroup: 'U10' },
    { teamId: 'swifts', name: 'U12 Swifts', ageGroup: 'U12' },
  ],
  stages: [
    { stageId: 'one', title: 'Third man', curriculum: 'U10' },
    { stageId: 'two', title: 'Switch', curriculum: 'U10' },
    { stageId: 'other', title: 'Carry', curriculum: 'U12' },
  ],
  cells: [cell('larks', 'one', '2026-09-07'), cell('larks', 'two', '2026-09-21')],
}

describe('a team on the page of planned and done', () => {
  test('shows its own stages and the weeks from its first to its last', () => {
    const [larks, ...others] = trellisesOf(coverage)
    expect(others).toEqual([])
    expect(larks?.weeks).toEqual(['2026-09-07', '2026-09-14', '2026-09-21'])
    expect(larks?.rows.map(({ title }) => title)).toEqual(['Third man', 'Switch'])
  })

  test('keeps every week of a stage in its column', () => {
    const [larks] = trellisesOf(coverage)
    expect(larks?.rows.map(({ cells }) => cells.map((one) => one?.week ?? null))).toEqual([
      ['2026-09-07', null, null],
      [null, null, '2026-09-21'],
    ])
  })
})
