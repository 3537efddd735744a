import type { DraftEdit } from '@espalier/contract/curricula'
import { ok, type Result } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { openStoredDraft } from './bodies'
import { findDraft, lockDraft } from './queries'

/** The draft as it is now written; a stale one is refused with the draft that stands. */
export function saveDraft(
  deps: Deps,
  request: CommandRequest,
  curriculumId: string,
  body: DraftEdit,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'curricula.write',
    find: async (db) => ((await findDraft(db, curriculumId)) === null ? null : {}),
    lock: ({ db }) => lockDraft(db, curriculumId),
    target: () => ({}),
    current: ({ version, doc }) => ({ version, document: { document: openStoredDraft(doc) } }),
    work: async ({ db }, locked) => {
      const { document } = body
      const version = locked.version + 1
      await db.sql.changed({
        name: 'update-draft',
        text: 'update draft set doc = $3, doc_schema = $4, version = $5 where club_id = $1 and curriculum_id = $2',
        values: [db.clubId, curriculumId, JSON.stringify(document), document.v, version],
      })
      await db.sql.changed({
        name: 'update-curriculum',
        text: 'update curriculum set name = $3, age_group = $4 where club_id = $1 and curriculum_id = $2',
        values: [db.clubId, curriculumId, document.name, document.ageGroup],
      })
      const stages = document.progressions.reduce((sum, progression) => sum + progression.stages.length, 0)
      return ok({
        status: 200,
        id: curriculumId,
        version,
        entry: { kind: 'draft.saved', subjectId: curriculumId, facts: { version, stages } },
      })
    },
  })
}
