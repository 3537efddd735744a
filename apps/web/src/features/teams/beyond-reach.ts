import { checkChoicesOf, checkPattern, clubProfileFor, teamReachOf } from '@espalier/domain/check'
import type { VersionContent } from '@espalier/domain/curriculum'
import { nominalSpace } from '@espalier/domain/pitch'
import { metresOf } from '@espalier/domain/quantities'
import type { MeasuredReach } from '@espalier/domain/session'

export type BeyondReach = { readonly patternId: string; readonly title: string; readonly sentences: readonly string[] }

/**
 * The patterns of a version with passes beyond a team's own reach, on the pitch they are drawn on and by the settings the
 * version was published with.
 */
export function listBeyondReach(content: VersionContent, measured: MeasuredReach): readonly BeyondReach[] {
  const reach = teamReachOf(metresOf(measured.strongFootMm), metresOf(measured.otherFootMm))
  if (!reach.ok) return []
  const choices = checkChoicesOf(content.settings)
  return content.patterns.flatMap(({ patternId, document }) => {
    const profile = clubProfileFor(document.ageGroup, content.settings.profiles)
    const options = { choices, profile, teamReach: reach.value }
    const { notes } = checkPattern(document, nominalSpace(document.formatId), options)
    const said = notes.filter(({ code }) => code === 'beyond-team-reach').map(({ sentence }) => sentence)
    // The same pass in two answers is said once.
    const sentences = [...new Set(said)]
    return sentences.length === 0 ? [] : [{ patternId, title: document.title, sentences }]
  })
}
