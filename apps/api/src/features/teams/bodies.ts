import type { Team } from '@espalier/contract/places'
import { localDate } from '@espalier/domain/quantities'
import type { TeamRow } from './queries'

export function teamBodyOf(row: TeamRow): Team {
  const follows =
    row.curriculum_id === null || row.number === null || row.from_date === null
      ? null
      : { curriculumId: row.curriculum_id, number: row.number, fromDate: localDate(row.from_date) }
  return {
    teamId: row.team_id,
    seasonId: row.season_id,
    name: row.name,
    ageGroup: row.age_group,
    category: row.category,
    formatId: row.format_id,
    version: row.version,
    follows,
    squadSize: row.squad_size,
    reach: row.reach,
  }
}
