import { type FormatChoices, formatChoicesOf } from '../formats'
import { ok, type Result, refuse } from '../quantities'
import {
  editProfile,
  PROFILE_FIELDS,
  type ProfileChanges,
  type ProfileField,
  type ProfileRefusal,
} from './edit-profile'
import { AGE_PROFILES, type AgeProfile, PROFILE_IDS, type ProfileId, profileFor } from './profiles'

/**
 * A club's own values of one age, in thousandths of the profile's units, so that they are whole: mm, mm/s, mm/s² and ms.
 * Only what differs from the printed value stands here.
 */
export type ClubProfile = Readonly<Partial<Record<ProfileField, number>>>
export type ClubProfiles = Readonly<Partial<Record<ProfileId, ClubProfile>>>

export type ClubProfileFault = { readonly profileId: ProfileId; readonly refusal: ProfileRefusal }
export type ClubProfilesRefusal = {
  readonly code: 'profiles-not-possible'
  readonly faults: readonly ClubProfileFault[]
}

/** The values to keep: what equals the printed value stays the printed one with its source. */
export function decideClubProfiles(profiles: ClubProfiles): Result<ClubProfiles, ClubProfilesRefusal> {
  const kept: Partial<Record<ProfileId, ClubProfile>> = {}
  const faults: ClubProfileFault[] = []
  for (const profileId of PROFILE_IDS) {
    const own = ownValues(AGE_PROFILES[profileId], profiles[profileId] ?? {})
    const edited = editProfile(AGE_PROFILES[profileId], changesOf(own))
    if (!edited.ok) faults.push({ profileId, refusal: edited.refusal })
    else if (Object.keys(own).length > 0) kept[profileId] = own
  }
  return faults.length === 0 ? ok(kept) : refuse({ code: 'profiles-not-possible', faults })
}

/** How many values a club has of its own, over all ages. */
export function countOwnValues(profiles: ClubProfiles | undefined): number {
  return PROFILE_IDS.reduce((count, profileId) => count + Object.keys(profiles?.[profileId] ?? {}).length, 0)
}

/**
 * The profile of an age group as a club has set it. Frozen versions keep values for years: where they no longer fit what
 * is printed today, such as a speed with the ball above a corrected top speed, the printed profile speaks alone.
 */
export function clubProfileFor(ageGroup: string, profiles: ClubProfiles | undefined): AgeProfile {
  const printed = profileFor(ageGroup)
  const edited = editProfile(printed, changesOf(profiles?.[printed.profileId] ?? {}))
  return edited.ok ? edited.value : printed
}

/** What the check takes from a club's settings. */
export type CheckChoices = FormatChoices & { readonly profiles?: ClubProfiles }

export function checkChoicesOf(
  settings: Parameters<typeof formatChoicesOf>[0] & { readonly profiles?: ClubProfiles },
): CheckChoices {
  const choices = formatChoicesOf(settings)
  return settings.profiles === undefined ? choices : { ...choices, profiles: settings.profiles }
}

function ownValues(printed: AgeProfile, values: ClubProfile): ClubProfile {
  const own: Partial<Record<ProfileField, number>> = {}
  for (const field of PROFILE_FIELDS) {
    const value = values[field]
    if (value !== undefined && value !== thousandthsOf(printed[field].value)) own[field] = value
  }
  return own
}

function changesOf(values: ClubProfile): ProfileChanges {
  const changes: Partial<Record<ProfileField, number>> = {}
  for (const field of PROFILE_FIELDS) {
    const value = values[field]
    if (value !== undefined) changes[field] = value / 1000
  }
  return changes
}

/** A value of a profile as a club's own is kept. */
export function thousandthsOf(value: number): number {
  return Math.round(value * 1000)
}
