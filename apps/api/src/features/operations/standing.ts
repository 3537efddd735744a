import { ok, type Result, refuse } from '@espalier/domain/quantities'
import type { ClubDb } from '../../db/with-club'
import type { Refusal } from '../../http/problem-error'

export type StandingReport = {
  readonly recordId: string
  readonly authorId: string
  readonly standing: 'stands' | 'superseded' | 'rival'
}

export type StandingDecision = {
  readonly standing: 'stands' | 'rival'
  /** The report that this one takes the place of. */
  readonly superseded: string | null
}

/**
 * Which place a report takes among those of its evening. The first one stands. A correction takes the place of the
 * report it names, where its author or a coach of the team makes it; anybody else's becomes a rival like that of a second
 * person who names none, visible until somebody of the team corrects; the
 * same person has to say that it is a correction.
 */
export function decideStanding(
  reports: readonly StandingReport[],
  supersedes: string | null,
  author: { readonly memberId: string; readonly isCoach: boolean },
): Result<StandingDecision, Refusal> {
  if (supersedes !== null) {
    const old = reports.find(({ recordId }) => recordId === supersedes)
    const pointer = '/body/supersedes'
    if (old === undefined)
      return refuse({ code: 'reference-unknown', errors: [{ pointer, detail: 'is no report of this evening' }] })
    if (old.standing === 'superseded')
      return refuse({ code: 'report-stands-already', errors: [{ pointer, detail: 'was corrected already' }] })
    if (author.isCoach || old.authorId === author.memberId)
      return ok({ standing: old.standing, superseded: supersedes })
  }
  const live = reports.filter(({ standing }) => standing !== 'superseded')
  if (live.length === 0) return ok({ standing: 'stands', superseded: null })
  if (live.some((report) => report.authorId === author.memberId)) return refuse({ code: 'report-stands-already' })
  return ok({ standing: 'rival', superseded: null })
}

type ReportRow = { record_id: string; author_id: string; standing: StandingReport['standing'] }

export async function lockReports(db: ClubDb, dateId: string): Promise<readonly StandingReport[]> {
  const rows = await db.sql.rows<ReportRow>({
    name: 'lock-reports',
    text: `select record_id, author_id, standing from record where club_id = $1 and date_id = $2
           order by record_id for no key update`,
    values: [db.clubId, dateId],
  })
  return rows.map((row) => ({ recordId: row.record_id, authorId: row.author_id, standing: row.standing }))
}
