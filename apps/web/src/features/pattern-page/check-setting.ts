import {
  type CheckChoices,
  type CheckOptions,
  clubProfileFor,
  type ProfileId,
  profileFor,
  type Surface,
} from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'

/** For whom and on what a page checks a pattern: chosen on the page, no part of the document. */
export type CheckSetting = {
  /** Null for the age the pattern is written for. */
  readonly profileId: ProfileId | null
  readonly surface: Surface
}

export const USUAL_SETTING: CheckSetting = { profileId: null, surface: 'normal' }

/** The profile that is checked with, as it stands in the page's sentence. */
export function checkedProfile(document: PatternDocument, { profileId }: CheckSetting): ProfileId {
  return profileFor(profileId ?? document.ageGroup).profileId
}

/** What every part of the check takes: the club's own profile of the age where it has set one. */
export function checkOptionsOf(
  document: PatternDocument,
  choices: CheckChoices,
  setting: CheckSetting,
): Pick<CheckOptions, 'choices' | 'surface'> & Required<Pick<CheckOptions, 'profile'>> {
  const profile = clubProfileFor(checkedProfile(document, setting), choices.profiles)
  return { choices, surface: setting.surface, profile }
}
