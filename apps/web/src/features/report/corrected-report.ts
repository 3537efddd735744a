import type { RecordRow } from '@espalier/contract/records'
import type { Kit } from '@espalier/domain/session'
import { reportMessage } from '../../messages/report'
import type { ReportAnswers, ReportedPattern } from './report-answers'

/** A report that stands and is to be corrected, as the club has it. */
export type Corrected = { readonly record: RecordRow; readonly pattern: ReportedPattern | null }

type Asked = {
  readonly records: readonly RecordRow[]
  readonly dateId: string
  /** The report sent from this phone, where it still knows it. */
  readonly reportId: string | null
}

/** The report a correction takes the place of: this phone's own while it counts, else the one that stands. */
export function findCorrected({ records, dateId, reportId }: Asked): RecordRow | null {
  const live = records.filter((record) => record.dateId === dateId && record.standing !== 'superseded')
  return (
    live.find(({ recordId }) => recordId === reportId) ?? live.find(({ standing }) => standing === 'stands') ?? null
  )
}

/**
 * The stage that was reported, which need not be the one a plan of now would take: what was reported has moved the team on.
 * Where the report names none, the evening's own stands.
 */
export function reportedPattern(record: RecordRow, kit: Kit, planned: ReportedPattern | null): ReportedPattern | null {
  const named = record.stages[0]?.stageId ?? record.changes.find(({ stageId }) => stageId !== null)?.stageId ?? null
  if (named === null || named === planned?.stageId) return planned
  const stage = kit.adopted?.content.progressions.flatMap(({ stages }) => stages).find((one) => one.stageId === named)
  return {
    stageId: named,
    title: stage?.title ?? reportMessage('thePattern'),
    pressure: stage?.pressure ?? record.stages[0]?.pressureReached ?? 'none',
  }
}

/** What was answered then; the second adult is asked again where the club has nobody of that name any more. */
export function answersThen({ record, pattern }: Corrected, kit: Kit): ReportAnswers {
  const [stage] = record.stages
  const adult = kit.adults.find(({ displayName }) => displayName === record.secondAdult)
  return {
    howFar: stage?.pressureReached ?? (pattern === null ? undefined : 'not-reached'),
    gotOut: stage?.gotOut,
    secondAdult: record.secondAdult === null ? null : adult?.memberId,
    chips: [...new Set(record.changes.map(({ chip }) => chip))],
    turnout: record.turnout,
    guests: record.guests,
    minutes: record.minutes,
    stageMinutes: stage?.minutes ?? 0,
  }
}
