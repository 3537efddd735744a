import { teamParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { playerEdit, playerParams, squad, squadImportBody } from '@espalier/contract/squads'
import { decideAccess } from '@espalier/domain/access'
import { runQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, commandSchema, editSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { findTeam } from '../teams/queries'
import { playerBodyOf } from './bodies'
import { changePlayer } from './change-player'
import { importSquad } from './import-squad'
import { listPlayers } from './queries'

export function registerSquads(app: Api, deps: Deps): void {
  app.get(
    paths.squad,
    { schema: { params: teamParams, response: responses({ 200: squad }) }, config: memberRoute('squad.read-counts') },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'squad.read-counts',
          find: (db) => findTeam(db, request.params.teamId),
          target: ({ teamId }) => ({ teamId }),
          read: async (db, { teamId }, member) => {
            const names = decideAccess(member, 'squad.read-names', { teamId }, deps.accessRules) === 'allowed'
            const rows = await listPlayers(db, teamId)
            return { players: rows.map((row) => playerBodyOf(row, db.clubId, names ? deps.nameKey : null)) }
          },
        }),
      ),
  )
  app.post(
    paths.squadImports,
    { schema: commandSchema(teamParams, squadImportBody), config: commandRoute('squad.write') },
    async (request, reply) =>
      sendOutcome(reply, unwrap(await importSquad(deps, commandOf(request), request.params.teamId, request.body))),
  )
  app.put(
    paths.player,
    { schema: editSchema(playerParams, playerEdit), config: commandRoute('squad.write') },
    async (request, reply) => {
      const { teamId, playerId } = request.params
      return sendOutcome(reply, unwrap(await changePlayer(deps, commandOf(request), teamId, playerId, request.body)))
    },
  )
}
