import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type ClubProfiles,
  checkChoicesOf,
  clubProfileFor,
  countOwnValues,
  decideClubProfiles,
  thousandthsOf,
} from './club-profiles'
import { PROFILE_FIELDS } from './edit-profile'
import { AGE_PROFILES, PROFILE_IDS, profileFor } from './profiles'

describe('what a club keeps of its own', () => {
  test('is only what differs from the printed value, so that the rest keeps its source', () => {
    const printed = thousandthsOf(AGE_PROFILES.U11.kickSpeedMax.value)
    expect(decideClubProfiles({ U11: { kickSpeedMax: printed, topSpeed: 6000 }, U12: {} })).toEqual({
      ok: true,
      value: { U11: { topSpeed: 6000 } },
    })
  })

  test('is refused where it is a slip of the pen, each age by name', () => {
    expect(decideClubProfiles({ U8: { topSpeed: 19_400 }, U10: { carrySpeed: 5_500 }, U12: { reach: 800 } })).toEqual({
      ok: false,
      refusal: {
        code: 'profiles-not-possible',
        faults: [
          {
            profileId: 'U8',
            refusal: { code: 'profile-value-out-of-range', field: 'topSpeed', least: 2, most: 11 },
          },
          {
            profileId: 'U10',
            refusal: { code: 'profile-values-disagree', field: 'carrySpeed', above: 'topSpeed' },
          },
        ],
      },
    })
  })

  test('deciding twice changes nothing more, and what is kept is what the check plays with', () => {
    const value = fc.integer({ min: 100, max: 9000 })
    const profiles = fc.dictionary(
      fc.constantFrom(...PROFILE_IDS),
      fc.dictionary(fc.constantFrom(...PROFILE_FIELDS), value, { maxKeys: 3 }),
      { maxKeys: 3 },
    )
    let kept = 0
    fc.assert(
      fc.property(profiles, (asked) => {
        const decided = decideClubProfiles(asked)
        if (!decided.ok) return
        kept += countOwnValues(decided.value)
        expect(decideClubProfiles(decided.value)).toEqual(decided)
        for (const profileId of PROFILE_IDS) {
          const profile = clubProfileFor(profileId, decided.value)
          for (const field of PROFILE_FIELDS) {
            const own = decided.value[profileId]?.[field]
            const expected =
              own === undefined
                ? AGE_PROFILES[profileId][field]
                : expect.objectContaining({ value: own / 1000, kind: 'club' })
            expect(profile[field]).toEqual(expected)
          }
        }
      }),
      { seed: 11, numRuns: 100 },
    )
    // Else every case was refused and nothing was looked at.
    expect(kept).toBeGreaterThan(20)
  })
})

describe('the profile a club checks with', () => {
  const own: ClubProfiles = { U8: { topSpeed: 4_500 } }

  test('is the printed one where the club has set nothing', () => {
    expect(clubProfileFor('U10', undefined)).toEqual(profileFor('U10'))
    expect(clubProfileFor('U10', own)).toEqual(profileFor('U10'))
  })
  test('covers ages younger than the table like the printed one does', () => {
    expect(clubProfileFor('U6', own).topSpeed).toMatchObject({ value: 4.5, kind: 'club' })
  })
  test('falls back to what is printed where old values no longer fit together', () => {
    expect(clubProfileFor('U8', { U8: { carrySpeed: 9_000 } })).toEqual(AGE_PROFILES.U8)
  })
})

test('settings without profiles give exactly the choices they always gave', () => {
  const settings = { penaltyMarkYards7v7: 10, crossingAtRelease: 'when-touched' } as const
  const choices = { penaltyMarkYards7v7: 10, buildOutCrossing7v7: 'touched' }
  expect(checkChoicesOf(settings)).toStrictEqual(choices)
  const profiles = { U9: { reach: 600 } }
  expect(checkChoicesOf({ ...settings, profiles })).toStrictEqual({ ...choices, profiles })
})
