import { createHash } from 'node:crypto'
import { setImmediate as otherRequests } from 'node:timers/promises'
import { CHECK_VERSION } from '@espalier/domain/check'
import {
  type CheckedPattern,
  type ClubSettings,
  type DraftDocument,
  decidePublish,
  type VersionContent,
} from '@espalier/domain/curriculum'
import { canonicalJson, type PlainValue } from '@espalier/domain/ledger'
import { missingTeaching } from '@espalier/domain/pattern'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { findClub } from '../clubs/queries'
import { listToFix } from '../patterns/pattern-notes'
import { lockPatterns } from '../patterns/queries'
import { openStoredPattern } from '../patterns/stored-pattern'
import { openStoredDraft } from './bodies'
import { openContent } from './frozen-content'
import { type DraftRow, findDraft, findVersion, lockDraft } from './queries'
import { saveVersion } from './save-version'

type LockedDraft = { readonly row: DraftRow; readonly document: DraftDocument }

/**
 * Publishes the draft: checked, frozen by value as canonical JSON, hashed, numbered and entered in the record book. The
 * draft then stands on the new version, so a second publication of the same draft is stale.
 */
export function publishVersion(
  deps: Deps,
  request: CommandRequest,
  curriculumId: string,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand<LockedDraft>(deps, request, {
    permission: 'curricula.publish',
    find: async (db) => ((await findDraft(db, curriculumId)) === null ? null : {}),
    lock: async ({ db }) => {
      const row = await lockDraft(db, curriculumId)
      return row === null ? null : { row, document: openStoredDraft(row.doc) }
    },
    target: () => ({}),
    current: ({ row, document }) => ({ version: row.version, document: { document } }),
    work: async (context, locked) => {
      // Only here, after the policy: the check takes longer than everything else that a command does.
      const { settings } = (await findClub(context.db))!
      const latest = await findLatest(context.db, curriculumId)
      const decided = decidePublish({
        curriculumId,
        number: (latest?.number ?? 0) + 1,
        draft: locked.document,
        patterns: await checkPatterns(context.db, locked.document, settings),
        settings,
        checkVersion: CHECK_VERSION,
        latest,
      })
      if (!decided.ok) return refuse(decided.refusal)
      const content = decided.value
      const text = canonicalJson(content as unknown as PlainValue)
      const hash = createHash('sha256').update(text, 'utf8').digest()
      const saved = await saveVersion(context, { content, text, hash, draftVersion: locked.row.version })
      if (!saved.ok) return saved
      return ok({
        status: 201,
        id: curriculumId,
        version: content.number,
        entry: {
          kind: 'version.published',
          subjectId: curriculumId,
          facts: {
            number: content.number,
            contentHash: hash.toString('hex'),
            checkVersion: CHECK_VERSION,
            patterns: content.patterns.length,
          },
        },
      })
    },
  })
}

async function findLatest(db: ClubDb, curriculumId: string): Promise<VersionContent | null> {
  const rows = await db.sql.rows<{ number: number | null }>({
    name: 'find-latest-number',
    text: 'select max(number) as number from curriculum_version where club_id = $1 and curriculum_id = $2',
    values: [db.clubId, curriculumId],
  })
  const number = rows[0]?.number ?? null
  if (number === null) return null
  const version = await findVersion(db, curriculumId, number)
  return version === null ? null : openContent(version.content_hash.toString('hex'), version.content)
}

async function checkPatterns(
  db: ClubDb,
  document: DraftDocument,
  settings: ClubSettings,
): Promise<readonly CheckedPattern[]> {
  const ids = document.progressions.flatMap(({ stages }) => stages.map(({ patternId }) => patternId))
  const checked: CheckedPattern[] = []
  for (const row of await lockPatterns(db, [...new Set(ids)])) {
    const pattern = openStoredPattern(row.doc)
    await otherRequests()
    checked.push({
      patternId: row.pattern_id,
      version: row.version,
      document: pattern,
      toFix: listToFix(pattern, settings).map(({ sentence }) => sentence),
      missing: missingTeaching(pattern),
    })
  }
  return checked
}
