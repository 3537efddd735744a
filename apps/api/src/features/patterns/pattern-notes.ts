import { type CheckNote, checkChoicesOf, checkPattern, clubProfileFor } from '@espalier/domain/check'
import type { ClubSettings } from '@espalier/domain/curriculum'
import type { PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'

/**
 * What must be fixed in a pattern before it is published, on the pitch it is drawn on and by the club's own profile of its
 * age; tonight's space is checked on the phone.
 */
export function listToFix(document: PatternDocument, settings: ClubSettings): readonly CheckNote[] {
  const choices = checkChoicesOf(settings)
  const profile = clubProfileFor(document.ageGroup, settings.profiles)
  return checkPattern(document, nominalSpace(document.formatId), { choices, profile, severity: 'to-fix' }).notes
}
