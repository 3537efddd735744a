import { describe, expect, test } from 'vitest'
import { editProfile, PROFILE_FIELDS, PROFILE_RANGES, type ProfileField } from './edit-profile'
import { AGE_PROFILES, PROFILE_IDS } from './profiles'

const U10 = AGE_PROFILES.U10

function editedAs(field: ProfileField, value: number) {
  return editProfile(U10, { [field]: value })
}

test('a changed value is the club’s, every other keeps its value and source', () => {
  const edited = editProfile(U10, { topSpeed: 6, reach: 0.7 })
  expect(edited).toEqual({
    ok: true,
    value: {
      ...U10,
      topSpeed: { value: 6, kind: 'club', source: 'set by the club for its own players' },
      reach: { value: 0.7, kind: 'club', source: 'set by the club for its own players' },
    },
  })
})

// Common practice, no source: wide enough for the slowest child of six and the fastest adult, too narrow for kilometres an hour.
test('what a club may set is what a form shows beside its fields (common practice, no source)', () => {
  expect(PROFILE_RANGES).toEqual({
    topSpeed: [2, 11],
    acceleration: [0.5, 8],
    reaction: [0.1, 1],
    receiveTurnLook: [0.2, 5],
    firstTouch: [0.1, 3],
    oneTouch: [0.05, 2],
    carrySpeed: [1, 10],
    arrivalSpeed: [1, 15],
    arrivalSpeedIntoSpace: [0.5, 15],
    kickSpeedMax: [3, 40],
    throwSpeedMax: [2, 30],
    passLengthMax: [2, 80],
    reach: [0.1, 1.5],
  })
  expect(editProfile(U10, { topSpeed: 19.4 }).ok).toBe(false)
})

test('every field of a profile can be set, to itself too', () => {
  expect([...PROFILE_FIELDS].sort()).toEqual(
    Object.keys(U10)
      .filter((field) => field !== 'profileId')
      .sort(),
  )
  for (const field of PROFILE_FIELDS) {
    const edited = editedAs(field, U10[field].value)
    expect(edited).toMatchObject({ ok: true, value: { [field]: { value: U10[field].value, kind: 'club' } } })
  }
})

test('the profiles of every age lie inside what a club may set, and none is changed by changing nothing', () => {
  for (const id of PROFILE_IDS) {
    const profile = AGE_PROFILES[id]
    const values = Object.fromEntries(PROFILE_FIELDS.map((field) => [field, profile[field].value]))
    expect(editProfile(profile, values).ok).toBe(true)
    expect(editProfile(profile, {})).toEqual({ ok: true, value: profile })
  }
})

describe.each(PROFILE_FIELDS)('%s', (field) => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, -1, 1000])('is never %d', (value) => {
    expect(editedAs(field, value)).toMatchObject({
      ok: false,
      refusal: { code: 'profile-value-out-of-range', field },
    })
  })

  test('reaches both ends of its range and no further', () => {
    const refused = editedAs(field, Number.NaN)
    if (refused.ok || refused.refusal.code !== 'profile-value-out-of-range') throw new Error('a NaN was taken')
    const { least, most } = refused.refusal
    const inRange = (value: number) => {
      const edited = editedAs(field, value)
      return edited.ok || edited.refusal.code === 'profile-values-disagree'
    }
    expect([least, most].every(inRange)).toBe(true)
    expect([least - 0.001, most + 0.001].some(inRange)).toBe(false)
  })
})

test.each([
  ['carrySpeed', 6, 'topSpeed'],
  ['arrivalSpeed', 13, 'kickSpeedMax'],
  ['arrivalSpeedIntoSpace', 13, 'kickSpeedMax'],
] as const)('%s of %d is refused above %s', (field, value, above) => {
  expect(editProfile(U10, { [field]: value })).toEqual({
    ok: false,
    refusal: { code: 'profile-values-disagree', field, above },
  })
  expect(editProfile(U10, { [field]: value, [above]: value }).ok).toBe(true)
})
