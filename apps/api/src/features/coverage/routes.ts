import { clubParams } from '@espalier/contract/commands'
import { coverage, coverageCell, coverageCellQuery, coverageQuery } from '@espalier/contract/coverage'
import { paths } from '@espalier/contract/paths'
import { teamIdsOf } from '../../commands/check-access'
import { runListQuery, runQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, responses } from '../../http/api'
import { loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { findTeam } from '../teams/queries'
import { findCoverage, findCoverageCell } from './find-coverage'

export function registerCoverage(app: Api, deps: Deps): void {
  app.get(
    paths.coverage,
    {
      schema: { params: clubParams, querystring: coverageQuery, response: responses({ 200: coverage }) },
      config: memberRoute('coverage.read'),
    },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'coverage.read',
          read: (db, reach) => findCoverage(db, request.query.seasonId, teamIdsOf(reach)),
        }),
      ),
  )
  app.get(
    paths.coverageCell,
    {
      schema: { params: clubParams, querystring: coverageCellQuery, response: responses({ 200: coverageCell }) },
      config: memberRoute('coverage.read'),
    },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'coverage.read',
          find: (db) => findTeam(db, request.query.teamId),
          target: ({ teamId }) => ({ teamId }),
          read: (db) => findCoverageCell(db, request.query),
        }),
      ),
  )
}
