import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkShape } from '../pattern'
import { samplePattern } from '../pattern/fixtures/sample-pattern'
import { nominalSpace } from '../pitch'
import { CHECK_VERSION, checkPattern } from './check-pattern'
import { coverOf } from './cover/cover-of'
import { RUNS_MAX } from './error-runs/error-runner'
import { errorRuns } from './error-runs/error-runs'
import { hostileCase } from './fixtures/hostile-case'
import { pressureOn } from './pressure/pressure'
import { AGE_PROFILES } from './profiles'
import { checkReport, findNotFinite } from './report'

const space = nominalSpace('us-7v7')
const NOTHING_MORE = { looks: false, pressure: false, errorRuns: null } as const

describe('the report of a check', () => {
  test('is what each part says by itself, with the same players on the same ground', () => {
    const who = { profile: AGE_PROFILES.U12, surface: 'slow' } as const
    const pressure = { opponentsMax: 2, released: 'first-touch' } as const
    const runs = { runs: 50, seed: 7 }
    const told = checkReport(samplePattern, space, { ...who, looks: true, pressure, errorRuns: runs })
    expect(told.ok && told.value).toEqual({
      checkVersion: CHECK_VERSION,
      ...checkPattern(samplePattern, space, who),
      looks: coverOf(samplePattern, space, who),
      pressure: { ...pressureOn(samplePattern, space, { ...who, ...pressure }), sentence: expect.any(String) },
      errorRuns: (errorRuns(samplePattern, space, { ...who, ...runs }) as { readonly value: object }).value,
    })
  })

  test('holds null for every part that is not asked', () => {
    const told = checkReport(samplePattern, space, NOTHING_MORE)
    expect(told.ok && told.value).toMatchObject({ looks: null, pressure: null, errorRuns: null })
  })

  test('is refused with the reason where its error runs are', () => {
    const told = checkReport(samplePattern, space, { ...NOTHING_MORE, errorRuns: { runs: RUNS_MAX + 1, seed: 0 } })
    expect(told).toMatchObject({ ok: false, refusal: { code: 'runs-out-of-range' } })
  })
})

describe('a hostile document that its shape lets through', () => {
  // Coincident players, balls that go nowhere, places 150 m away, spaces of another format, six looks: see the fixture.
  test('is checked to the end, and JSON holds every number of what is said', () => {
    let checked = 0
    fc.assert(
      fc.property(hostileCase, ({ document, space: measured, profileId, surface, seed }) => {
        if (checkShape(document).length > 0) return
        checked += 1
        const told = checkReport(document, measured ?? nominalSpace(document.formatId), {
          profile: AGE_PROFILES[profileId],
          surface,
          looks: document.looks.length < 2,
          pressure: { opponentsMax: 1 },
          errorRuns: { runs: 5, seed },
        })
        expect(told.ok).toBe(true)
        if (told.ok) expect(JSON.parse(JSON.stringify(told.value))).toEqual(told.value)
      }),
      { numRuns: 30 },
    )
    expect(checked).toBeGreaterThan(10)
  }, 60_000)

  test('control: a number without end is found wherever it stands', () => {
    expect(findNotFinite({ a: [1, { b: Number.POSITIVE_INFINITY }] })).toBe('/a/1/b')
    expect(findNotFinite([Number.NaN])).toBe('/0')
    expect(findNotFinite({ a: [1, null, 'x', { b: -0.5 }] })).toBeNull()
  })
})
