import {
  type ClubProfile,
  decideClubProfiles,
  PROFILE_FIELDS,
  type ProfileField,
  type ProfileId,
  type ProfileRefusal,
  thousandthsOf,
} from '@espalier/domain/check'
import { ageProfilesMessage } from '../../messages/age-profiles'
import { numberFromText } from '../../ui/number-field/number-text'

export type OwnValuesReading =
  | { readonly ok: true; readonly own: ClubProfile }
  | { readonly ok: false; readonly wrong: Readonly<Partial<Record<ProfileField, string>>> }

/** The fields of one age as they were filled in; an empty one is the printed value. */
export function readOwnValues(profileId: ProfileId, textOf: (field: ProfileField) => string): OwnValuesReading {
  const own: Partial<Record<ProfileField, number>> = {}
  const wrong: Partial<Record<ProfileField, string>> = {}
  for (const field of PROFILE_FIELDS) {
    const text = textOf(field)
    if (text === '') continue
    const value = numberFromText(text)
    if (value === null) wrong[field] = ageProfilesMessage('wrongNumber')
    else own[field] = thousandthsOf(value)
  }
  for (const field of PROFILE_FIELDS) {
    // One by one: the page says of every value that cannot be, not only of the first.
    const decided = decideClubProfiles({ [profileId]: field in own ? { [field]: own[field] } : {} })
    const refusal = decided.ok ? undefined : decided.refusal.faults[0]?.refusal
    if (refusal?.code === 'profile-value-out-of-range') wrong[field] = wrongWords(refusal)
  }
  if (Object.keys(wrong).length > 0) return { ok: false, wrong }
  const decided = decideClubProfiles({ [profileId]: own })
  if (decided.ok) return { ok: true, own: decided.value[profileId] ?? {} }
  return {
    ok: false,
    wrong: Object.fromEntries(decided.refusal.faults.map(({ refusal }) => [refusal.field, wrongWords(refusal)])),
  }
}

function wrongWords(refusal: ProfileRefusal): string {
  return refusal.code === 'profile-value-out-of-range'
    ? ageProfilesMessage('wrongRange', { least: refusal.least, most: refusal.most })
    : ageProfilesMessage('wrongAbove', { above: ageProfilesMessage(refusal.above) })
}
