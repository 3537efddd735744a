import * as z from 'zod/mini'
import { line, localDate, uuid } from './quantities'
import { recordRow } from './records'

export const coverageQuery = z.strictObject({ seasonId: uuid })
const cell = z.strictObject({
  teamId: uuid,
  stageId: uuid,
  /** The week's Monday. */
  week: localDate,
  plannedMinutes: z.int(),
  /** What the first plan said, before any re-planning. */
  firstPlannedMinutes: z.int(),
  doneMinutes: z.int(),
  records: z.int(),
  late: z.int(),
})
/** Planned and done: team × stage × week of one season. */
export const coverage = z.strictObject({
  season: z.strictObject({ seasonId: uuid, name: line(60), firstDay: localDate, lastDay: localDate }),
  weeks: z.array(localDate),
  teams: z.array(z.strictObject({ teamId: uuid, name: line(60), ageGroup: z.string() })),
  stages: z.array(z.strictObject({ stageId: uuid, title: line(80), curriculum: line(80) })),
  cells: z.array(cell),
})
export type Coverage = z.infer<typeof coverage>

export const coverageCellQuery = z.strictObject({ seasonId: uuid, teamId: uuid, stageId: uuid, week: localDate })
export const coverageCell = z.strictObject({
  cell,
  stageTitle: line(80),
  teamName: line(60),
  records: z.array(recordRow),
})
export type CoverageCell = z.infer<typeof coverageCell>
