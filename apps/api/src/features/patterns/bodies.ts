import type { PatternRow as PatternOnWire, PatternSummary } from '@espalier/contract/patterns'
import type { ClubSettings } from '@espalier/domain/curriculum'
import { listToFix } from './pattern-notes'
import type { PatternRow } from './queries'
import { openStoredPattern } from './stored-pattern'

export function patternBodyOf(row: PatternRow): PatternOnWire {
  return { patternId: row.pattern_id, version: row.version, document: openStoredPattern(row.doc) }
}

export function patternSummaryOf(row: PatternRow, settings: ClubSettings): PatternSummary {
  const document = openStoredPattern(row.doc)
  const { title, problem, formatId, formation, ageGroup, steps } = document
  return {
    patternId: row.pattern_id,
    version: row.version,
    title,
    problem,
    formatId,
    formation,
    ageGroup,
    steps: steps.length,
    toFix: listToFix(document, settings).length,
  }
}
