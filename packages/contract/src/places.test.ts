import { describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { clubSettings } from './places'
import { kit } from './sessions'

const id = (number: number) => `019a0000-0000-7000-8000-${String(number).padStart(12, '0')}`
const before = {
  v: 1,
  crossingAtRelease: 'when-released',
  penaltyMarkYards7v7: 8,
  coachesAdopt: true,
  adultsRequired: 2,
  welfareOfficer: '',
}

describe('settings', () => {
  test('as versions froze them before clubs had own values open unchanged, with no key more', () => {
    expect(z.parse(clubSettings, before)).toStrictEqual(before)
  })
  test('with own values open whatever ranges hold today, but never in parts of a thousandth or with another key', () => {
    const own = (profiles: object) => z.safeParse(clubSettings, { ...before, profiles }).success
    expect(own({ U10: { topSpeed: 90_000 } })).toBe(true)
    expect(own({})).toBe(true)
    expect(own({ U10: { topSpeed: 5_000.5 } })).toBe(false)
    expect(own({ U10: { shortName: 5_000 } })).toBe(false)
    expect(own({ U30: { topSpeed: 5_000 } })).toBe(false)
  })
})

test('a kit that a phone saved before teams could be measured still opens; one that names a child’s result does not', () => {
  const team = { teamId: id(2), name: 'U10 Larks', ageGroup: 'U10', formatId: 'us-7v7', seasonId: id(3) }
  const saved = (more: object) => ({
    v: 1,
    club: { clubId: id(1), name: 'Quillmoor Juniors', zone: 'Europe/London', demo: true },
    team: { ...team, ...more },
    adults: [],
    dates: [],
    spaces: [],
    equipment: { cone: 0, pole: 0, 'small-goal': 0, ball: 0, bib: 0 },
    squad: [],
    adopted: null,
    progress: [],
  })
  const reach = { strongFootMm: 14_000, otherFootMm: 9_000, measuredOn: '2026-09-01' }
  const opens = (more: object) => z.safeParse(kit, saved(more)).success
  expect([opens({}), opens({ reach: null }), opens({ reach })]).toEqual([true, true, true])
  expect(opens({ reach: { ...reach, results: [] } })).toBe(false)
})
