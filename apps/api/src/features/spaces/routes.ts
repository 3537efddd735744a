import { clubParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { spaceBody, spaceEdit, spaceParams, spaces } from '@espalier/contract/places'
import { teamIdsOf } from '../../commands/check-access'
import { runListQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, commandSchema, editSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { addSpace } from './add-space'
import { spaceBodyOf } from './bodies'
import { changeSpace } from './change-space'
import { listSpaces } from './queries'

export function registerSpaces(app: Api, deps: Deps): void {
  app.get(
    paths.spaces,
    { schema: { params: clubParams, response: responses({ 200: spaces }) }, config: memberRoute('spaces.read') },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'spaces.read',
          read: async (db, reach) => ({ spaces: (await listSpaces(db, teamIdsOf(reach))).map(spaceBodyOf) }),
        }),
      ),
  )
  app.post(
    paths.spaces,
    { schema: commandSchema(clubParams, spaceBody), config: commandRoute('spaces.write') },
    async (request, reply) => sendOutcome(reply, unwrap(await addSpace(deps, commandOf(request), request.body))),
  )
  app.put(
    paths.space,
    { schema: editSchema(spaceParams, spaceEdit), config: commandRoute('spaces.write') },
    async (request, reply) =>
      sendOutcome(reply, unwrap(await changeSpace(deps, commandOf(request), request.params.spaceId, request.body))),
  )
}
