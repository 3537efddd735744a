import type { AdoptionBody } from '@espalier/contract/curricula'
import type { Member } from '@espalier/domain/access'
import { decideAdopt } from '@espalier/domain/curriculum'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { dayInZone, isRealDay } from '../../clock/local-dates'
import { type CommandAnswer, type CommandContext, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { findClub } from '../clubs/queries'
import { findVersion } from '../curricula/queries'
import { findTeam, lockTeam } from '../teams/queries'
import { adoptionInForce, listAdoptions } from './queries'
import { replanTeam } from './replan-team'

/** A team follows a version from a day on, and its dates from now on are planned by it. */
export function adoptVersion(
  deps: Deps,
  request: CommandRequest,
  teamId: string,
  body: AdoptionBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'versions.adopt',
    find: (db) => findTeam(db, teamId),
    lock: ({ db }) => lockTeam(db, teamId),
    target: (team) => ({ teamId: team.teamId }),
    work: async (context, team) => {
      if (!isRealDay(body.fromDate)) {
        const errors = [{ pointer: '/fromDate', detail: 'the calendar has no such day' }]
        return refuse({ code: 'bad-request', errors })
      }
      const decided = await decide(context, teamId, body)
      if (!decided.ok) return decided
      const early = await refuseEarlier(context, body)
      if (!early.ok) return early
      await insertAdoption(context, teamId, body)
      const planned = await replanTeam(context, team)
      return ok({
        status: 201,
        id: body.id,
        version: null,
        entry: {
          kind: 'version.adopted',
          subjectId: body.curriculumId,
          teamId,
          facts: { number: body.number, fromDate: body.fromDate, planned },
        },
      })
    },
  })
}

/** What a team followed on days gone by is what its reports are read against: only a director sets that right. */
async function refuseEarlier({ db, member, now }: CommandContext, body: AdoptionBody): Promise<Result<true, Refusal>> {
  if (isDirector(member)) return ok(true)
  const club = await findClub(db)
  if (body.fromDate >= dayInZone(now, club!.zone)) return ok(true)
  const errors = [{ pointer: '/fromDate', detail: 'lies before today; a director may adopt from an earlier day' }]
  return refuse({ code: 'bad-request', errors })
}

function isDirector(member: Member): boolean {
  return member.roles.some(({ role }) => role === 'director')
}

async function decide({ db, member }: CommandContext, teamId: string, body: AdoptionBody) {
  const club = await findClub(db)
  const version = await findVersion(db, body.curriculumId, body.number)
  const inForce = adoptionInForce(await listAdoptions(db, teamId), body.fromDate)
  return decideAdopt({
    version,
    following: inForce === null ? null : { curriculumId: inForce.curriculum_id, number: inForce.number },
    wished: { curriculumId: body.curriculumId, number: body.number },
    byDirector: isDirector(member),
    coachesAdopt: club!.settings.coachesAdopt,
  })
}

async function insertAdoption(context: CommandContext, teamId: string, body: AdoptionBody): Promise<void> {
  await context.db.sql.changed({
    name: 'insert-adoption',
    text: `insert into adoption (club_id, adoption_id, team_id, ordinal, from_date, curriculum_id, number, adopted_by,
             entry_id)
           select $1, $2, $3, coalesce(max(ordinal), 0) + 1, $4, $5, $6, $7, $8
           from adoption where club_id = $1 and team_id = $3`,
    values: [
      context.db.clubId,
      body.id,
      teamId,
      body.fromDate,
      body.curriculumId,
      body.number,
      context.member.memberId,
      context.entryId,
    ],
  })
}
