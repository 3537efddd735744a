import type { EntryFacts } from '@espalier/domain/ledger'
import type { Space } from '@espalier/domain/pitch'

/** The columns of a space in the order of both statements that write one. */
export function spaceValues(space: Space): readonly unknown[] {
  const { name, venue, lengthMm, widthMm, formatId } = space
  return [name, venue, lengthMm, widthMm, formatId, JSON.stringify(space)]
}

export function spaceFacts(space: Space, version: number): EntryFacts {
  return {
    version,
    lengthMm: space.lengthMm,
    widthMm: space.widthMm,
    covers: space.covers,
    format: space.formatId,
    goals: space.goals.length,
  }
}
