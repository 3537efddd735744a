import { clubParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { seasonBody, seasons } from '@espalier/contract/places'
import { runListQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, commandSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { addSeason } from './add-season'
import { seasonBodyOf } from './bodies'
import { listSeasons } from './queries'

export function registerSeasons(app: Api, deps: Deps): void {
  app.get(
    paths.seasons,
    { schema: { params: clubParams, response: responses({ 200: seasons }) }, config: memberRoute('seasons.read') },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'seasons.read',
          read: async (db) => ({ seasons: (await listSeasons(db)).map(seasonBodyOf) }),
        }),
      ),
  )
  app.post(
    paths.seasons,
    { schema: commandSchema(clubParams, seasonBody), config: commandRoute('seasons.write') },
    async (request, reply) => sendOutcome(reply, unwrap(await addSeason(deps, commandOf(request), request.body))),
  )
}
