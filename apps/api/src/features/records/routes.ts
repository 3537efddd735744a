import { teamParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { recordList, recordParams, recordRow } from '@espalier/contract/records'
import { runQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, responses } from '../../http/api'
import { loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { findTeam } from '../teams/queries'
import { recordBodyOf } from './bodies'
import { findRecord, listRecords } from './queries'

export function registerRecords(app: Api, deps: Deps): void {
  app.get(
    paths.teamRecords,
    { schema: { params: teamParams, response: responses({ 200: recordList }) }, config: memberRoute('records.read') },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'records.read',
          find: (db) => findTeam(db, request.params.teamId),
          target: ({ teamId }) => ({ teamId }),
          read: async (db, { teamId }) => ({ records: (await listRecords(db, teamId)).map(recordBodyOf) }),
        }),
      ),
  )
  app.get(
    paths.record,
    { schema: { params: recordParams, response: responses({ 200: recordRow }) }, config: memberRoute('records.read') },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'records.read',
          find: (db) => findRecord(db, request.params.recordId),
          target: (found) => ({ teamId: found.team_id }),
          read: async (_db, found) => recordBodyOf(found),
        }),
      ),
  )
}
