import type { CurriculumBody } from '@espalier/contract/curricula'
import { ok, type Result } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'

/** A curriculum and its one draft. */
export function addCurriculum(
  deps: Deps,
  request: CommandRequest,
  body: CurriculumBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'curricula.write',
    find: async () => ({}),
    lock: async () => true,
    target: () => ({}),
    work: async ({ db }) => {
      const { document } = body
      await db.sql.changed({
        name: 'insert-curriculum',
        text: 'insert into curriculum (club_id, curriculum_id, name, age_group) values ($1, $2, $3, $4)',
        values: [db.clubId, body.id, document.name, document.ageGroup],
      })
      await db.sql.changed({
        name: 'insert-draft',
        text: 'insert into draft (club_id, curriculum_id, version, doc, doc_schema) values ($1, $2, 1, $3, $4)',
        values: [db.clubId, body.id, JSON.stringify(document), document.v],
      })
      const facts = { ageGroup: document.ageGroup, format: document.formatId }
      return ok({
        status: 201,
        id: body.id,
        version: 1,
        entry: { kind: 'curriculum.created', subjectId: body.id, facts },
      })
    },
  })
}
