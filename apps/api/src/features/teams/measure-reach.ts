import { teamReachOf } from '@espalier/domain/check'
import { assert, metresOf, millimetresOf, ok, type Result, refuse } from '@espalier/domain/quantities'
import type { MeasuredReach } from '@espalier/domain/session'
import { dayInZone, isRealDay } from '../../clock/local-dates'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { ProblemPointer, Refusal } from '../../http/problem-error'
import { findClub } from '../clubs/queries'
import { findReach, findTeam, lockTeam } from './queries'

/** How far the team's passes find a gate, measured on the field: the last measuring replaces the one before. */
export function measureReach(
  deps: Deps,
  request: CommandRequest,
  teamId: string,
  body: MeasuredReach,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'team-reach.write',
    find: (db) => findTeam(db, teamId),
    lock: async ({ db }) => {
      const team = await lockTeam(db, teamId)
      return team === null ? null : { reach: await findReach(db, teamId) }
    },
    target: () => ({ teamId }),
    current: ({ reach }) => ({
      version: reach?.version ?? 0,
      document: { reach: reach === null ? null : bodyOf(reach) },
    }),
    work: async ({ db, now }, locked) => {
      const faults = await listDayFaults(db, body.measuredOn, now)
      if (faults.length > 0) return refuse({ code: 'bad-request', errors: faults })
      const reach = teamReachOf(metresOf(body.strongFootMm), metresOf(body.otherFootMm))
      assert(reach.ok, 'the contract allows no reach that the domain refuses')
      const strongFootMm = millimetresOf(reach.value.strongFoot.value)
      const otherFootMm = millimetresOf(reach.value.otherFoot.value)
      const version = (locked.reach?.version ?? 0) + 1
      await db.sql.changed({
        name: 'measure-reach',
        text: `insert into team_reach (club_id, team_id, strong_foot_mm, other_foot_mm, measured_on, version)
               values ($1, $2, $3, $4, $5, $6)
               on conflict (club_id, team_id) do update set strong_foot_mm = excluded.strong_foot_mm,
                 other_foot_mm = excluded.other_foot_mm, measured_on = excluded.measured_on, version = excluded.version`,
        values: [db.clubId, teamId, strongFootMm, otherFootMm, body.measuredOn, version],
      })
      const facts = { strongFootMm, otherFootMm, measuredOn: body.measuredOn, version }
      return ok({
        status: 200,
        id: teamId,
        version,
        entry: { kind: 'team-reach.measured', subjectId: teamId, teamId, facts },
      })
    },
  })
}

function bodyOf({ strongFootMm, otherFootMm, measuredOn }: MeasuredReach): MeasuredReach {
  return { strongFootMm, otherFootMm, measuredOn }
}

async function listDayFaults(db: ClubDb, day: string, now: number): Promise<readonly ProblemPointer[]> {
  if (!isRealDay(day)) return [{ pointer: '/measuredOn', detail: 'the calendar has no such day' }]
  const club = await findClub(db)
  return day <= dayInZone(now, club!.zone) ? [] : [{ pointer: '/measuredOn', detail: 'has not come yet' }]
}
