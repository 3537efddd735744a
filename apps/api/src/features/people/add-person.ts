import type { PersonBody } from '@espalier/contract/people'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { insertMembership, listRoleFaults, roleFact, writeRoles } from './memberships'

/** A new person of the club, with their roles; the way in is a link made afterwards. */
export function addPerson(
  deps: Deps,
  request: CommandRequest,
  body: PersonBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'people.write',
    find: async () => ({}),
    lock: async () => true,
    target: () => ({}),
    work: async ({ db, newId }) => {
      const faults = await listRoleFaults(db, body.roles)
      if (faults.length > 0) return refuse({ code: 'bad-request', errors: faults })
      await insertMembership(db, { memberId: body.id, accountId: newId(), displayName: body.displayName })
      await writeRoles(db, body.id, body.roles, newId)
      return ok({
        status: 201,
        id: body.id,
        version: 1,
        entry: { kind: 'person.added', subjectId: body.id, facts: { roles: roleFact(body.roles) } },
      })
    },
  })
}
