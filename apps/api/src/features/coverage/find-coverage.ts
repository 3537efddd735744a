import type { Coverage, CoverageCell } from '@espalier/contract/coverage'
import { type CoverageCell as ComparedCell, comparePlannedAndDone } from '@espalier/domain/coverage'
import { localDate } from '@espalier/domain/quantities'
import { addDays, mondayOf } from '../../clock/local-dates'
import type { ClubDb } from '../../db/with-club'
import { recordBodyOf } from '../records/bodies'
import { listRecordsOfCell } from '../records/queries'
import { findSeason, listCoverageStages, listCoverageTeams, listDone, listPlanned } from './queries'

/** Planned and done of a season, for all teams or those in reach. */
export async function findCoverage(
  db: ClubDb,
  seasonId: string,
  teamIds: readonly string[] | null,
): Promise<Coverage | null> {
  const season = await findSeason(db, seasonId)
  if (season === null) return null
  const teams = await listCoverageTeams(db, seasonId, teamIds)
  const ids = teams.map(({ team_id }) => team_id)
  const cells = comparePlannedAndDone(await listPlanned(db, seasonId, ids), await listDone(db, seasonId, ids))
  const stages = await listCoverageStages(db, [...new Set(cells.map(({ stageId }) => stageId))])
  return {
    season: {
      seasonId,
      name: season.name,
      firstDay: localDate(season.first_day),
      lastDay: localDate(season.last_day),
    },
    weeks: listWeeks(season.first_day, season.last_day),
    teams: teams.map(({ team_id, name, age_group }) => ({ teamId: team_id, name, ageGroup: age_group })),
    stages: stages.map(({ stage_id, title, curriculum }) => ({ stageId: stage_id, title, curriculum })),
    cells: cells.map(cellBodyOf),
  }
}

function cellBodyOf(cell: ComparedCell) {
  return { ...cell, week: localDate(cell.week) }
}

function listWeeks(firstDay: string, lastDay: string) {
  const weeks = []
  for (let week = mondayOf(firstDay); week <= lastDay; week = addDays(week, 7)) weeks.push(week)
  return weeks
}

export type CellWish = {
  readonly seasonId: string
  readonly teamId: string
  readonly stageId: string
  readonly week: string
}

/** One cell with the reports behind it; null where nothing was planned and nothing done. */
export async function findCoverageCell(db: ClubDb, wish: CellWish): Promise<CoverageCell | null> {
  const [team] = await listCoverageTeams(db, wish.seasonId, [wish.teamId])
  const [stage] = await listCoverageStages(db, [wish.stageId])
  if (team === undefined || stage === undefined) return null
  const cells = comparePlannedAndDone(
    await listPlanned(db, wish.seasonId, [wish.teamId]),
    await listDone(db, wish.seasonId, [wish.teamId]),
  )
  const cell = cells.find(({ stageId, week }) => stageId === wish.stageId && week === wish.week)
  if (cell === undefined) return null
  const records = await listRecordsOfCell(db, wish)
  return { cell: cellBodyOf(cell), stageTitle: stage.title, teamName: team.name, records: records.map(recordBodyOf) }
}
