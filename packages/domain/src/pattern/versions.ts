import { unreachable } from '../quantities'
import type { PatternDocument } from './document'

/**
 * Every shape a pattern was ever saved in. A new version joins this union with its own arm below;
 * `fixtures/` holds one frozen document for each, and each must open for ever.
 */
export type StoredPattern = PatternDocument

/** Brings a stored document, already parsed at the edge, to the version written today. */
export function openPattern(stored: StoredPattern): PatternDocument {
  switch (stored.v) {
    case 1:
      return stored
    default:
      return unreachable(stored.v)
  }
}
