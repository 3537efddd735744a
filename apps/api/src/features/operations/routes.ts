import { clubParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { type OperationResult, operationResults, operationsBody } from '@espalier/contract/records'
import { ok } from '@espalier/domain/quantities'
import { runListQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { operationsTaken } from '../../events'
import { type Api, responses } from '../../http/api'
import { loginOf } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { takeOperation } from './take-operation'

/** Two hundred operations of a phone that was away. */
const BODY_BYTES_MAX = 256 * 1024

export function registerOperations(app: Api, deps: Deps): void {
  app.post(
    paths.operations,
    {
      bodyLimit: BODY_BYTES_MAX,
      schema: { params: clubParams, body: operationsBody, response: responses({ 200: operationResults }) },
      config: { access: { kind: 'member', permission: 'operations.write' }, alsoCounted: 'operations' },
    },
    async (request) => {
      const { clubId } = request.params
      const login = loginOf(request)
      // Whoever could send no operation at all is told so once, and nothing of theirs is kept.
      unwrap(await runListQuery(deps, login, clubId, { permission: 'operations.write', read: async () => ok(null) }))
      const results: OperationResult[] = []
      for (const raw of request.body.operations)
        results.push(await takeOperation(deps, request.log, login, clubId, raw))
      const count = (status: (typeof results)[number]['status']) =>
        results.filter((one) => one.status === status).length
      operationsTaken(request.log, clubId, {
        applied: count('applied'),
        replayed: count('replayed'),
        refused: count('refused'),
        unknown: count('unknown'),
      })
      return { results }
    },
  )
}
