import { setImmediate as otherRequests } from 'node:timers/promises'
import { CHECK_VERSION } from '@espalier/domain/check'
import type { ClubSettings } from '@espalier/domain/curriculum'
import type { PatternDocument } from '@espalier/domain/pattern'
import { listToFix } from './pattern-notes'

/** Of some hundred bytes each; by habit more than all clubs of one process look at in a day. */
const COUNTS_MAX = 5_000

const counts = new Map<string, number>()

export type VersionedPattern = {
  readonly clubId: string
  readonly patternId: string
  readonly version: number
  readonly document: PatternDocument
}

/**
 * How many notes of a pattern's version are to be fixed. A version never changes, so it is checked once in the life of
 * this process; between two checks other requests get their turn.
 */
export async function countToFix(pattern: VersionedPattern, settings: ClubSettings): Promise<number> {
  const { clubId, patternId, version, document } = pattern
  const name = JSON.stringify([clubId, patternId, version, CHECK_VERSION, settings])
  const known = counts.get(name)
  if (known !== undefined) return known
  await otherRequests()
  const count = listToFix(document, settings).length
  counts.set(name, count)
  for (const oldest of counts.keys()) {
    if (counts.size <= COUNTS_MAX) break
    counts.delete(oldest)
  }
  return count
}
