import type { SeasonBody } from '@espalier/contract/places'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { addDays, isRealDay, SPAN_DAYS_MAX } from '../../clock/local-dates'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { ProblemPointer, Refusal } from '../../http/problem-error'

export function addSeason(
  deps: Deps,
  request: CommandRequest,
  body: SeasonBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'seasons.write',
    find: async () => ({}),
    lock: async () => true,
    target: () => ({}),
    unique: { season_name: '/name' },
    work: async ({ db }) => {
      const faults = listDayFaults(body)
      if (faults.length > 0) return refuse({ code: 'bad-request', errors: faults })
      await db.sql.changed({
        name: 'insert-season',
        text: 'insert into season (club_id, season_id, name, first_day, last_day) values ($1, $2, $3, $4, $5)',
        values: [db.clubId, body.id, body.name, body.firstDay, body.lastDay],
      })
      const facts = { firstDay: body.firstDay, lastDay: body.lastDay }
      return ok({ status: 201, id: body.id, version: null, entry: { kind: 'season.added', subjectId: body.id, facts } })
    },
  })
}

function listDayFaults(body: SeasonBody): readonly ProblemPointer[] {
  const faults: ProblemPointer[] = []
  if (!isRealDay(body.firstDay)) faults.push({ pointer: '/firstDay', detail: 'the calendar has no such day' })
  if (!isRealDay(body.lastDay)) faults.push({ pointer: '/lastDay', detail: 'the calendar has no such day' })
  if (faults.length === 0 && body.lastDay < body.firstDay)
    faults.push({ pointer: '/lastDay', detail: 'comes before the first day' })
  if (faults.length === 0 && body.lastDay > addDays(body.firstDay, SPAN_DAYS_MAX))
    faults.push({ pointer: '/lastDay', detail: `comes more than ${SPAN_DAYS_MAX} days after the first day` })
  return faults
}
