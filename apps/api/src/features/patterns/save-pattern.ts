import type { PatternBody, PatternEdit } from '@espalier/contract/patterns'
import { PATTERN_DOCUMENT_VERSION, type PatternDocument } from '@espalier/domain/pattern'
import { ok, type Result } from '@espalier/domain/quantities'
import {
  type CommandAnswer,
  type CommandContext,
  type CommandRequest,
  type Effect,
  runCommand,
} from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { findPattern, lockPatterns } from './queries'
import { refuseShapeFaults } from './shape-refusal'
import { openStoredPattern } from './stored-pattern'

/** A new pattern. It may be unfinished, but never without meaning. */
export function addPattern(
  deps: Deps,
  request: CommandRequest,
  body: PatternBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'patterns.write',
    find: async () => ({}),
    lock: async () => true,
    target: () => ({}),
    work: async (context) => {
      const shape = refuseShapeFaults(body.document)
      if (!shape.ok) return shape
      await context.db.sql.changed({
        name: 'insert-pattern',
        text: 'insert into pattern (club_id, pattern_id, title, format_id, version) values ($1, $2, $3, $4, 1)',
        values: [context.db.clubId, body.id, body.document.title, body.document.formatId],
      })
      return ok(await insertVersion(context, body.id, 1, body.document))
    },
  })
}

/** The pattern's next version; every older one stays as it is. */
export function savePattern(
  deps: Deps,
  request: CommandRequest,
  patternId: string,
  body: PatternEdit,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'patterns.write',
    find: async (db) => ((await findPattern(db, patternId)) === null ? null : {}),
    lock: async ({ db }) => (await lockPatterns(db, [patternId]))[0] ?? null,
    target: () => ({}),
    current: ({ version, doc }) => ({ version, document: { document: openStoredPattern(doc) } }),
    work: async (context, locked) => {
      const shape = refuseShapeFaults(body.document)
      if (!shape.ok) return shape
      const version = locked.version + 1
      await context.db.sql.changed({
        name: 'update-pattern',
        text: 'update pattern set title = $3, format_id = $4, version = $5 where club_id = $1 and pattern_id = $2',
        values: [context.db.clubId, patternId, body.document.title, body.document.formatId, version],
      })
      return ok(await insertVersion(context, patternId, version, body.document))
    },
  })
}

async function insertVersion(
  { db, member }: CommandContext,
  patternId: string,
  version: number,
  document: PatternDocument,
): Promise<Effect> {
  await db.sql.changed({
    name: 'insert-pattern-version',
    text: `insert into pattern_version (club_id, pattern_id, version, doc, doc_schema, author_id)
           values ($1, $2, $3, $4, $5, $6)`,
    values: [db.clubId, patternId, version, JSON.stringify(document), PATTERN_DOCUMENT_VERSION, member.memberId],
  })
  const facts = { version, format: document.formatId, steps: document.steps.length }
  return {
    status: version === 1 ? 201 : 200,
    id: patternId,
    version,
    entry: { kind: 'pattern.saved', subjectId: patternId, facts },
  }
}
