import { clubParams, entityTag } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import {
  type PatternSummary,
  patternBody,
  patternEdit,
  patternList,
  patternParams,
  patternRow,
} from '@espalier/contract/patterns'
import type { ClubSettings } from '@espalier/domain/curriculum'
import { runListQuery, runQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, commandSchema, editSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { findClub } from '../clubs/queries'
import { patternBodyOf, patternSummaryOf } from './bodies'
import { findPattern, listPatterns, type PatternRow } from './queries'
import { addPattern, savePattern } from './save-pattern'
import { openStoredPattern } from './stored-pattern'
import { countToFix } from './to-fix-counts'

export function registerPatterns(app: Api, deps: Deps): void {
  app.get(
    paths.patterns,
    {
      schema: { params: clubParams, response: responses({ 200: patternList }) },
      config: memberRoute('patterns.read-draft'),
    },
    async (request) => {
      const { clubId } = request.params
      const found = unwrap(
        await runListQuery(deps, loginOf(request), clubId, {
          permission: 'patterns.read-draft',
          read: async (db) => ({ settings: (await findClub(db))!.settings, rows: await listPatterns(db) }),
        }),
      )
      return { patterns: await summarise(clubId, found.settings, found.rows) }
    },
  )
  app.post(
    paths.patterns,
    { schema: commandSchema(clubParams, patternBody), config: commandRoute('patterns.write') },
    async (request, reply) => sendOutcome(reply, unwrap(await addPattern(deps, commandOf(request), request.body))),
  )
  app.get(
    paths.pattern,
    {
      schema: { params: patternParams, response: responses({ 200: patternRow }) },
      config: memberRoute('patterns.read-draft'),
    },
    async (request, reply) => {
      const body = unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'patterns.read-draft',
          find: (db) => findPattern(db, request.params.patternId),
          target: () => ({}),
          read: async (_db, found) => patternBodyOf(found),
        }),
      )
      return reply.header('etag', entityTag(body.version)).send(body)
    },
  )
  app.put(
    paths.pattern,
    { schema: editSchema(patternParams, patternEdit), config: commandRoute('patterns.write') },
    async (request, reply) =>
      sendOutcome(reply, unwrap(await savePattern(deps, commandOf(request), request.params.patternId, request.body))),
  )
}

/** Outside the transaction: a check of a pattern nobody has looked at takes its time. */
async function summarise(
  clubId: string,
  settings: ClubSettings,
  rows: readonly PatternRow[],
): Promise<PatternSummary[]> {
  const summaries: PatternSummary[] = []
  for (const row of rows) {
    const document = openStoredPattern(row.doc)
    const toFix = await countToFix({ clubId, patternId: row.pattern_id, version: row.version, document }, settings)
    summaries.push(patternSummaryOf(row, document, toFix))
  }
  return summaries
}
