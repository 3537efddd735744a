import {
  metres,
  metresPerSecond,
  metresPerSecondSquared,
  ok,
  type Result,
  refuse,
  type Sourced,
  seconds,
} from '../quantities'
import { PROFILE_FIELDS, type ProfileField } from './profile-names'
import type { AgeProfile } from './profiles'

export { PROFILE_FIELDS, type ProfileField } from './profile-names'

/** What a club may set instead of the age's own numbers, in the units of the profile. */
export type ProfileChanges = Readonly<Partial<Record<ProfileField, number>>>

export type ProfileRefusal =
  | {
      readonly code: 'profile-value-out-of-range'
      readonly field: ProfileField
      readonly least: number
      readonly most: number
    }
  | { readonly code: 'profile-values-disagree'; readonly field: ProfileField; readonly above: ProfileField }

/**
 * The widest a club may go: what a slow child of six and a fast adult do, with room on both sides (habit: common practice, no
 * source). Outside these a number is a slip of the pen, such as kilometres an hour. A form shows them beside its fields.
 */
export const PROFILE_RANGES = {
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
} as const satisfies Record<ProfileField, readonly [least: number, most: number]>

/** Nobody is faster with the ball than without it, and no ball arrives faster than it can be kicked. */
const NEVER_ABOVE = [
  ['carrySpeed', 'topSpeed'],
  ['arrivalSpeed', 'kickSpeedMax'],
  ['arrivalSpeedIntoSpace', 'kickSpeedMax'],
] as const satisfies readonly (readonly [ProfileField, ProfileField])[]

/** A profile with a club's own values, each then shown as the club's; what is not changed keeps its source. */
export function editProfile(profile: AgeProfile, changes: ProfileChanges): Result<AgeProfile, ProfileRefusal> {
  for (const field of PROFILE_FIELDS) {
    const value = changes[field]
    const [least, most] = PROFILE_RANGES[field]
    if (value !== undefined && !(value >= least && value <= most)) {
      return refuse({ code: 'profile-value-out-of-range', field, least, most })
    }
  }
  const edited = withChanges(profile, changes)
  const disagreeing = NEVER_ABOVE.find(([field, above]) => edited[field].value > edited[above].value)
  if (disagreeing !== undefined) {
    return refuse({ code: 'profile-values-disagree', field: disagreeing[0], above: disagreeing[1] })
  }
  return ok(edited)
}

function withChanges(profile: AgeProfile, changes: ProfileChanges): AgeProfile {
  const set = <Value extends number>(field: ProfileField, kept: Sourced<Value>, make: (value: number) => Value) => {
    const value = changes[field]
    return value === undefined ? kept : ({ value: make(value), kind: 'club', source: CLUB } as const)
  }
  return {
    profileId: profile.profileId,
    topSpeed: set('topSpeed', profile.topSpeed, metresPerSecond),
    acceleration: set('acceleration', profile.acceleration, metresPerSecondSquared),
    reaction: set('reaction', profile.reaction, seconds),
    receiveTurnLook: set('receiveTurnLook', profile.receiveTurnLook, seconds),
    firstTouch: set('firstTouch', profile.firstTouch, seconds),
    oneTouch: set('oneTouch', profile.oneTouch, seconds),
    carrySpeed: set('carrySpeed', profile.carrySpeed, metresPerSecond),
    arrivalSpeed: set('arrivalSpeed', profile.arrivalSpeed, metresPerSecond),
    arrivalSpeedIntoSpace: set('arrivalSpeedIntoSpace', profile.arrivalSpeedIntoSpace, metresPerSecond),
    kickSpeedMax: set('kickSpeedMax', profile.kickSpeedMax, metresPerSecond),
    throwSpeedMax: set('throwSpeedMax', profile.throwSpeedMax, metresPerSecond),
    passLengthMax: set('passLengthMax', profile.passLengthMax, metres),
    reach: set('reach', profile.reach, metres),
  }
}

const CLUB = 'set by the club for its own players'
