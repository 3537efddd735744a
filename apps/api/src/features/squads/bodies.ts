import type { KeyObject } from 'node:crypto'
import type { Player } from '@espalier/contract/squads'
import type { PlayerRow } from './queries'
import { openName } from './sealed-names'

/** A child for who may see names, or with the name left shut and without the shirt. */
export function playerBodyOf(row: PlayerRow, clubId: string, nameKey: KeyObject | null): Player {
  return {
    playerId: row.player_id,
    shortName: nameKey === null ? null : nameOf(row, clubId, nameKey),
    // Among twelve children a number names one as surely as the name does.
    shirt: nameKey === null ? null : row.shirt,
    home: row.home,
    stretch: row.stretch,
    goalkeeper: row.goalkeeper,
    foot: row.foot,
    version: row.version,
  }
}

/** Null once the name is erased. */
export function nameOf(row: PlayerRow, clubId: string, nameKey: KeyObject): string | null {
  if (row.name_sealed === null || row.wrapped_key === null) return null
  const subject = { clubId, playerId: row.player_id }
  return openName(nameKey, subject, { sealed: row.name_sealed, wrappedKey: row.wrapped_key })
}
