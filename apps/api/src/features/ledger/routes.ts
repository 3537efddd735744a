import { clubParams } from '@espalier/contract/commands'
import {
  entryParams,
  ledgerConsistency,
  ledgerConsistencyQuery,
  ledgerEntries,
  ledgerEntriesQuery,
  ledgerHead,
  ledgerInclusion,
} from '@espalier/contract/ledger'
import { paths } from '@espalier/contract/paths'
import { teamIdsOf } from '../../commands/check-access'
import { runListQuery, runQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, responses } from '../../http/api'
import { loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { entryBodyOf, hexOf } from './bodies'
import { proveConsistency, proveInclusion } from './proofs'
import { ENTRIES_A_PAGE, findEntry, findHead, findLastSeal, listEntries } from './queries'

export function registerLedger(app: Api, deps: Deps): void {
  registerHead(app, deps)
  registerEntries(app, deps)
  app.get(
    paths.ledgerConsistency,
    {
      schema: {
        params: clubParams,
        querystring: ledgerConsistencyQuery,
        response: responses({ 200: ledgerConsistency }),
      },
      config: memberRoute('ledger.read'),
    },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'ledger.read',
          read: (db) => proveConsistency(db, Number(request.query.from), Number(request.query.to)),
        }),
      ),
  )
}

function registerHead(app: Api, deps: Deps): void {
  app.get(
    paths.ledgerHead,
    { schema: { params: clubParams, response: responses({ 200: ledgerHead }) }, config: memberRoute('ledger.read') },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'ledger.read',
          read: async (db) => {
            const head = await findHead(db)
            const seal = await findLastSeal(db)
            const sealed = seal === null ? null : { size: seal.size, at: seal.at.toISOString() }
            return { size: head!.size, root: hexOf(head!.root), sealed }
          },
        }),
      ),
  )
}

function registerEntries(app: Api, deps: Deps): void {
  app.get(
    paths.ledgerEntries,
    {
      schema: { params: clubParams, querystring: ledgerEntriesQuery, response: responses({ 200: ledgerEntries }) },
      config: memberRoute('ledger.read'),
    },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'ledger.read',
          read: async (db, reach) => {
            const { subjectId = null, before } = request.query
            const wish = { subjectId, before: before === undefined ? null : Number(before), teamIds: teamIdsOf(reach) }
            const rows = await listEntries(db, wish)
            const page = rows.slice(0, ENTRIES_A_PAGE)
            const next = rows.length > ENTRIES_A_PAGE ? String(page.at(-1)!.seq) : null
            return { entries: page.map(entryBodyOf), next }
          },
        }),
      ),
  )
  app.get(
    paths.ledgerInclusion,
    {
      schema: { params: entryParams, response: responses({ 200: ledgerInclusion }) },
      config: memberRoute('ledger.read'),
    },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'ledger.read',
          find: (db) => findEntry(db, request.params.entryId),
          target: (entry) => ({ teamId: entry.team_id }),
          read: (db, entry) => proveInclusion(db, entry),
        }),
      ),
  )
}
