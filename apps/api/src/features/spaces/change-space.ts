import type { SpaceEdit } from '@espalier/contract/places'
import { ok, type Result } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { findSpace, lockSpace } from './queries'
import { spaceFacts, spaceValues } from './space-values'

/** The same space measured again. */
export function changeSpace(
  deps: Deps,
  request: CommandRequest,
  spaceId: string,
  body: SpaceEdit,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'spaces.write',
    find: async (db) => ((await findSpace(db, spaceId)) === null ? null : {}),
    lock: ({ db }) => lockSpace(db, spaceId),
    target: () => ({}),
    current: ({ version, doc }) => ({ version, document: { space: doc } }),
    unique: { space_name: '/space/name' },
    work: async ({ db }, locked) => {
      const version = locked.version + 1
      await db.sql.changed({
        name: 'update-space',
        text: `update space set name = $3, venue = $4, length_mm = $5, width_mm = $6, format_id = $7, doc = $8, version = $9
               where club_id = $1 and space_id = $2`,
        values: [db.clubId, spaceId, ...spaceValues(body.space), version],
      })
      const facts = spaceFacts(body.space, version)
      return ok({ status: 200, id: spaceId, version, entry: { kind: 'space.measured', subjectId: spaceId, facts } })
    },
  })
}
