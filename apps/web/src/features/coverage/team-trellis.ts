import type { Coverage } from '@espalier/contract/coverage'

export type Cell = Coverage['cells'][number]

export type TrellisRow = {
  readonly stageId: string
  readonly title: string
  /** One for each week of the season that is shown; null where nothing was planned or done. */
  readonly cells: readonly (Cell | null)[]
}

export type TeamTrellis = {
  readonly teamId: string
  readonly name: string
  readonly ageGroup: string
  readonly weeks: readonly string[]
  readonly rows: readonly TrellisRow[]
}

/**
 * Each team with the stages that were planned for it or coached, and the weeks from its first to its last one. The
 * server's order of teams, stages and weeks is kept.
 */
export function trellisesOf(coverage: Coverage): readonly TeamTrellis[] {
  return coverage.teams.flatMap((team) => {
    const cells = coverage.cells.filter((cell) => cell.teamId === team.teamId)
    if (cells.length === 0) return []
    const touched = coverage.weeks.map((week) => cells.some((cell) => cell.week === week))
    const weeks = coverage.weeks.slice(touched.indexOf(true), touched.lastIndexOf(true) + 1)
    const rows = coverage.stages
      .filter(({ stageId }) => cells.some((cell) => cell.stageId === stageId))
      .map(({ stageId, title }) => ({
        stageId,
        title,
        cells: weeks.map((week) => cells.find((cell) => cell.stageId === stageId && cell.week === week) ?? null),
      }))
    return [{ teamId: team.teamId, name: team.name, ageGroup: team.ageGroup, weeks, rows }]
  })
}
