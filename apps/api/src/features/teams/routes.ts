import { clubParams, teamParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { reachBody, team, teamBody, teams } from '@espalier/contract/places'
import { dayInZone } from '../../clock/local-dates'
import { teamIdsOf } from '../../commands/check-access'
import { runListQuery, runQuery } from '../../commands/run-query'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import { type Api, commandSchema, editSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { findClub } from '../clubs/queries'
import { addTeam } from './add-team'
import { teamBodyOf } from './bodies'
import { measureReach } from './measure-reach'
import { listTeams } from './queries'

export function registerTeams(app: Api, deps: Deps): void {
  app.get(
    paths.teams,
    { schema: { params: clubParams, response: responses({ 200: teams }) }, config: memberRoute('teams.read') },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'teams.read',
          read: async (db, reach) => ({
            teams: (await listTeams(db, teamIdsOf(reach), await today(db, deps))).map(teamBodyOf),
          }),
        }),
      ),
  )
  app.post(
    paths.teams,
    { schema: commandSchema(clubParams, teamBody), config: commandRoute('teams.write') },
    async (request, reply) => sendOutcome(reply, unwrap(await addTeam(deps, commandOf(request), request.body))),
  )
  app.get(
    paths.team,
    { schema: { params: teamParams, response: responses({ 200: team }) }, config: memberRoute('teams.read') },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'teams.read',
          find: async (db) => (await listTeams(db, [request.params.teamId], await today(db, deps)))[0] ?? null,
          target: (found) => ({ teamId: found.team_id }),
          read: async (_db, found) => teamBodyOf(found),
        }),
      ),
  )
  app.put(
    paths.reach,
    { schema: editSchema(teamParams, reachBody), config: commandRoute('team-reach.write') },
    async (request, reply) =>
      sendOutcome(reply, unwrap(await measureReach(deps, commandOf(request), request.params.teamId, request.body))),
  )
}

/** The club's own calendar day: what a team follows changes at its midnight. */
async function today(db: ClubDb, deps: Deps): Promise<string> {
  const club = await findClub(db)
  return dayInZone(deps.now(), club?.zone ?? 'UTC')
}
