import type { AttendanceBody } from '@espalier/contract/records'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandContext, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { ProblemPointer, Refusal } from '../../http/problem-error'
import { findTeam } from '../teams/queries'
import { listSquadIds, lockEvening } from './queries'

/** Who came, as the coach ticked it. It never enters the record book; a mark that is replaced is kept beside it. */
export function markAttendance(
  deps: Deps,
  request: CommandRequest,
  operationId: string,
  body: AttendanceBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'operations.write',
    find: (db) => findTeam(db, body.teamId),
    lock: ({ db }) => findTeam(db, body.teamId),
    target: ({ teamId }) => ({ teamId }),
    work: async (context) => {
      const evening = await lockEvening(context.db, body.teamId, body.dateId)
      if (evening === null)
        return refuse({ code: 'date-unknown', errors: [{ pointer: '/body/dateId', detail: UNKNOWN }] })
      const squad = await listSquadIds(context.db, body.teamId)
      const faults = listMarkFaults(body, squad)
      if (faults.length > 0) return refuse({ code: 'player-unknown', errors: faults })
      await saveMarks(context, operationId, body)
      return ok({ status: 200, id: operationId, version: null, entry: null })
    },
  })
}

const UNKNOWN = 'is no date of this team'

function listMarkFaults(body: AttendanceBody, squad: ReadonlySet<string>): readonly ProblemPointer[] {
  const seen = new Set<string>()
  return body.marks.flatMap(({ playerId }, at): readonly ProblemPointer[] => {
    const pointer = `/body/marks/${at}/playerId`
    if (!squad.has(playerId)) return [{ pointer, detail: 'is no child of this squad' }]
    if (seen.has(playerId)) return [{ pointer, detail: 'stands twice' }]
    seen.add(playerId)
    return []
  })
}

async function saveMarks({ db, at }: CommandContext, operationId: string, body: AttendanceBody): Promise<void> {
  const playerIds = body.marks.map(({ playerId }) => playerId)
  const came = body.marks.map((mark) => mark.came)
  await db.sql.changed({
    name: 'keep-past-marks',
    text: `insert into attendance_past
             (club_id, date_id, player_id, operation_id, came, from_minute, to_minute, received_at)
           select a.club_id, a.date_id, a.player_id, a.operation_id, a.came, a.from_minute, a.to_minute, a.received_at
           from attendance a join unnest($3::uuid[], $4::boolean[]) as mark (player_id, came) using (player_id)
           where a.club_id = $1 and a.date_id = $2 and a.came <> mark.came`,
    values: [db.clubId, body.dateId, playerIds, came],
  })
  await db.sql.changed({
    name: 'save-marks',
    text: `insert into attendance (club_id, date_id, player_id, came, operation_id, received_at)
           select $1, $2, player_id, came, $5, $6 from unnest($3::uuid[], $4::boolean[]) as mark (player_id, came)
           on conflict (club_id, date_id, player_id) do update
             set came = excluded.came, operation_id = excluded.operation_id, received_at = excluded.received_at
             where attendance.came <> excluded.came`,
    values: [db.clubId, body.dateId, playerIds, came, operationId, at],
  })
}
