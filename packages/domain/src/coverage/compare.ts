import { compareIds } from '../quantities'

/** Where planned and done meet: one team, one stage, one week by its Monday. */
export type CellKey = { readonly teamId: string; readonly stageId: string; readonly week: string }

export type PlannedRow = CellKey & {
  readonly minutes: number
  /** Part of the first plan, before any re-planning. */
  readonly first: boolean
  /** Part of the plan that holds now, or that held when its date passed. */
  readonly holds: boolean
}

export type DoneRow = CellKey & { readonly recordId: string; readonly minutes: number; readonly late: boolean }

export type CoverageCell = CellKey & {
  readonly plannedMinutes: number
  readonly firstPlannedMinutes: number
  readonly doneMinutes: number
  readonly records: number
  readonly late: number
}

/** The comparison, cell by cell, in the order of week, team and stage. What nobody planned and nobody did has no cell. */
export function comparePlannedAndDone(
  planned: readonly PlannedRow[],
  done: readonly DoneRow[],
): readonly CoverageCell[] {
  const cells = new Map<string, Mutable<CoverageCell>>()
  for (const row of planned) {
    const cell = cellOf(cells, row)
    if (row.holds) cell.plannedMinutes += row.minutes
    if (row.first) cell.firstPlannedMinutes += row.minutes
  }
  const counted = new Set<string>()
  for (const row of done) {
    const cell = cellOf(cells, row)
    cell.doneMinutes += row.minutes
    const name = `${keyOf(row)}/${row.recordId}`
    if (counted.has(name)) continue
    counted.add(name)
    cell.records += 1
    if (row.late) cell.late += 1
  }
  return [...cells.values()].sort(
    (a, b) => compareIds(a.week, b.week) || compareIds(a.teamId, b.teamId) || compareIds(a.stageId, b.stageId),
  )
}

type Mutable<Shape> = { -readonly [Name in keyof Shape]: Shape[Name] }

function keyOf({ teamId, stageId, week }: CellKey): string {
  return `${teamId}/${stageId}/${week}`
}

function cellOf(cells: Map<string, Mutable<CoverageCell>>, key: CellKey): Mutable<CoverageCell> {
  const known = cells.get(keyOf(key))
  if (known !== undefined) return known
  const { teamId, stageId, week } = key
  const cell = { teamId, stageId, week, plannedMinutes: 0, firstPlannedMinutes: 0, doneMinutes: 0, records: 0, late: 0 }
  cells.set(keyOf(key), cell)
  return cell
}

/** How long after an evening's end a report counts as late: 48 hours (habit: common practice, no source). */
export const LATE_AFTER_MILLISECONDS = 48 * 3_600_000

/** Whether a report came so late that memory, not the evening, wrote it. Both instants in milliseconds. */
export function isLate(eveningEndedAt: number, reportedAt: number): boolean {
  return reportedAt - eveningEndedAt > LATE_AFTER_MILLISECONDS
}
