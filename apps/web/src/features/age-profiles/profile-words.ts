import type { ProfileField, ProfileId } from '@espalier/domain/check'
import { ageProfilesMessage } from '../../messages/age-profiles'

const UNITS = {
  topSpeed: 'unitSpeed',
  acceleration: 'unitAcceleration',
  reaction: 'unitSeconds',
  receiveTurnLook: 'unitSeconds',
  firstTouch: 'unitSeconds',
  oneTouch: 'unitSeconds',
  carrySpeed: 'unitSpeed',
  arrivalSpeed: 'unitSpeed',
  arrivalSpeedIntoSpace: 'unitSpeed',
  kickSpeedMax: 'unitSpeed',
  throwSpeedMax: 'unitSpeed',
  passLengthMax: 'unitMetres',
  reach: 'unitMetres',
} as const satisfies Record<ProfileField, string>

export function unitOf(field: ProfileField): string {
  return ageProfilesMessage(UNITS[field])
}

export function ageWord(profileId: ProfileId): string {
  return profileId === 'adult' ? ageProfilesMessage('adult') : profileId
}

/** A value of a profile to the thousandth, as a club's own is kept; no zeros behind. */
export function valueText(value: number): string {
  return String(Math.round(value * 1000) / 1000)
}
