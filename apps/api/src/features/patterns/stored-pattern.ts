import { patternDocument } from '@espalier/contract/patterns'
import { openPattern, type PatternDocument } from '@espalier/domain/pattern'
import * as z from 'zod/mini'

/** A document of the database is outside data: parsed once, and brought to the version written today. */
export function openStoredPattern(doc: unknown): PatternDocument {
  return openPattern(z.parse(patternDocument, doc))
}
