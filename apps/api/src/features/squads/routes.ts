import { teamParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { playerEdit, playerParams, squad, squadImportBody } from '@espalier/contract/squads'
import { decideAccess, type Permission } from '@espalier/domain/access'
import { compareIds } from '@espalier/domain/quantities'
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
            const may = (permission: Permission) =>
              decideAccess(member, permission, { teamId }, deps.accessRules) === 'allowed'
            const listed = await listPlayers(db, teamId)
            if (!may('squad.read-pseudonyms')) return { count: listed.length, players: [] }
            const names = may('squad.read-names')
            // By shirts for who may see them; the order must not tell the shirts to anybody else.
            const rows = names ? listed : [...listed].sort((a, b) => compareIds(a.player_id, b.player_id))
            return {
              count: rows.length,
              players: rows.map((row) => playerBodyOf(row, db.clubId, names ? deps.nameKey : null)),
            }
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
