import { type CheckNote, checkPattern } from '@espalier/domain/check'
import type { ClubSettings } from '@espalier/domain/curriculum'
import type { PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'

/** What the check says of a pattern on the pitch it is drawn on; tonight's space is checked on the phone. */
export function listNotes(document: PatternDocument, settings: ClubSettings): readonly CheckNote[] {
  const choices = { penaltyMarkYards7v7: settings.penaltyMarkYards7v7 }
  return checkPattern(document, nominalSpace(document.formatId), { choices }).notes
}

export function listToFix(document: PatternDocument, settings: ClubSettings): readonly CheckNote[] {
  return listNotes(document, settings).filter(({ severity }) => severity === 'to-fix')
}
