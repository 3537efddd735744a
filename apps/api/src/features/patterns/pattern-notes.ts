import { type CheckNote, checkPattern } from '@espalier/domain/check'
import type { ClubSettings } from '@espalier/domain/curriculum'
import { formatChoicesOf } from '@espalier/domain/formats'
import type { PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'

/** What must be fixed in a pattern before it is published, on the pitch it is drawn on; tonight's space is checked on the phone. */
export function listToFix(document: PatternDocument, settings: ClubSettings): readonly CheckNote[] {
  const choices = formatChoicesOf(settings)
  return checkPattern(document, nominalSpace(document.formatId), { choices, severity: 'to-fix' }).notes
}
