import type { SpaceBody } from '@espalier/contract/places'
import { ok, type Result } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { spaceFacts, spaceValues } from './space-values'

/** A space as somebody with a tape found it. Out of a format's range is only said on the page, never refused. */
export function addSpace(
  deps: Deps,
  request: CommandRequest,
  body: SpaceBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'spaces.write',
    find: async () => ({}),
    lock: async () => true,
    target: () => ({}),
    unique: { space_name: '/space/name' },
    work: async ({ db }) => {
      await db.sql.changed({
        name: 'insert-space',
        text: `insert into space (club_id, space_id, name, venue, length_mm, width_mm, format_id, doc)
               values ($1, $2, $3, $4, $5, $6, $7, $8)`,
        values: [db.clubId, body.id, ...spaceValues(body.space)],
      })
      const facts = spaceFacts(body.space, 1)
      return ok({ status: 201, id: body.id, version: 1, entry: { kind: 'space.measured', subjectId: body.id, facts } })
    },
  })
}
