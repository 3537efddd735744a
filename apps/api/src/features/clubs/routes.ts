import { clubParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { club, limitsEdit } from '@espalier/contract/places'
import { runQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, editSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { changeLimits } from './change-limits'
import { findClub } from './queries'

export function registerClub(app: Api, deps: Deps): void {
  app.get(
    paths.club,
    { schema: { params: clubParams, response: responses({ 200: club }) }, config: memberRoute('club.read') },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'club.read',
          find: findClub,
          target: () => ({}),
          read: async (_db, found) => found,
        }),
      ),
  )
  app.put(
    paths.settings,
    { schema: editSchema(clubParams, limitsEdit), config: commandRoute('club-limits.write') },
    async (request, reply) => sendOutcome(reply, unwrap(await changeLimits(deps, commandOf(request), request.body))),
  )
}
