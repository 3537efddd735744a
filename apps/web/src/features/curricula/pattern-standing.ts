import type { PatternRow, PatternSummary } from '@espalier/contract/patterns'
import { checkChoicesOf, checkPattern, clubProfileFor } from '@espalier/domain/check'
import {
  type ClubSettings,
  type DraftDocument,
  listPublishFaults,
  type PatternStanding,
  type PublishFault,
} from '@espalier/domain/curriculum'
import { missingTeaching } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'

/** What of a pattern stands in the way of publishing it: the same check on the same pitch as when it is published. */
export function standingOf({ patternId, document }: PatternRow, settings: ClubSettings): PatternStanding {
  const choices = checkChoicesOf(settings)
  const profile = clubProfileFor(document.ageGroup, settings.profiles)
  const { notes } = checkPattern(document, nominalSpace(document.formatId), { choices, profile, severity: 'to-fix' })
  return {
    patternId,
    title: document.title,
    toFix: notes.map(({ sentence }) => sentence),
    missing: missingTeaching(document),
  }
}

/**
 * What stands in the way of a draft as it is being written. A pattern that was chosen just now is judged once the draft
 * is saved. Ids and references are not said here: a draft with faults of those is not even saved.
 */
export function faultsInTheWay(
  draft: DraftDocument,
  standings: readonly PatternStanding[],
  patterns: readonly PatternSummary[],
): readonly PublishFault[] {
  const chosenNow = patterns
    .filter(({ patternId }) => !standings.some((standing) => standing.patternId === patternId))
    .map(({ patternId, title }) => ({ patternId, title, toFix: [], missing: [] }))
  return listPublishFaults(draft, [...standings, ...chosenNow]).filter(
    ({ code, pointer }) =>
      code !== 'identifier-twice' && code !== 'reference-unknown' && !isUnchosen(draft, code, pointer),
  )
}

/** A stage whose pattern is still to be chosen is said where it is written. */
function isUnchosen(draft: DraftDocument, code: PublishFault['code'], pointer: string): boolean {
  const place = /^\/progressions\/(\d+)\/stages\/(\d+)\/patternId$/.exec(pointer)
  if (code !== 'pattern-unknown' || place === null) return false
  return draft.progressions[Number(place[1])]?.stages[Number(place[2])]?.patternId === ''
}
