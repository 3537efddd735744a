import type { PatternRow as PatternOnWire, PatternSummary } from '@espalier/contract/patterns'
import type { PatternDocument } from '@espalier/domain/pattern'
import type { PatternRow } from './queries'
import { openStoredPattern } from './stored-pattern'

export function patternBodyOf(row: PatternRow): PatternOnWire {
  return { patternId: row.pattern_id, version: row.version, document: openStoredPattern(row.doc) }
}

export function patternSummaryOf(row: PatternRow, document: PatternDocument, toFix: number): PatternSummary {
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
    toFix,
  }
}
