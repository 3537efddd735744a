import type { Season } from '@espalier/contract/places'
import { localDateOf } from '../../clock/local-dates'
import type { SeasonRow } from './queries'

export function seasonBodyOf(row: SeasonRow): Season {
  return {
    seasonId: row.seasonId,
    name: row.name,
    firstDay: localDateOf(row.firstDay),
    lastDay: localDateOf(row.lastDay),
  }
}
