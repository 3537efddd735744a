import type { PersonEdit } from '@espalier/contract/people'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { lockClub } from '../clubs/queries'
import { revokeLinks } from './links'
import { hasPerson, type LockedPerson, listRoleFaults, lockPerson, roleFact, writeRoles } from './memberships'

/** Name, roles and leaving. Roles change under a lock that waits for every command of that person and stops new ones. */
export function changePerson(
  deps: Deps,
  request: CommandRequest,
  memberId: string,
  body: PersonEdit,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'people.write',
    find: async (db) => ((await hasPerson(db, memberId)) ? {} : null),
    // Changes of a club's people come one after the other: two administrators who remove each other cannot both succeed,
    // and neither waits for the other's own row while holding what the other waits for.
    lockFirst: lockClub,
    lock: ({ db }) => lockPerson(db, memberId),
    target: () => ({}),
    current: (person) => ({ version: person.version, document: documentOf(person) }),
    work: async ({ db, at, newId }, person) => {
      const faults = await listRoleFaults(db, body.roles)
      if (faults.length > 0) return refuse({ code: 'bad-request', errors: faults })
      await writeRoles(db, memberId, body.left ? [] : body.roles, newId)
      if (body.left) await revokeLinks(db, memberId, at)
      const version = person.version + 1
      await updatePerson(db, memberId, body, version, at)
      if (!(await hasAdministrator(db))) return refuse({ code: 'last-administrator' })
      return ok({
        status: 200,
        id: memberId,
        version,
        entry: {
          kind: body.left ? 'person.left' : 'person.changed',
          subjectId: memberId,
          facts: { version, roles: body.left ? null : roleFact(body.roles) },
        },
      })
    },
  })
}

function documentOf({ displayName, roles, left }: LockedPerson): PersonEdit {
  return { displayName, roles: roles.map((role) => ({ ...role })), left }
}

async function hasAdministrator(db: ClubDb): Promise<boolean> {
  const rows = await db.sql.rows({
    name: 'find-an-administrator',
    text: `select 1 from member_role r join membership m using (club_id, member_id)
           where r.club_id = $1 and r.role = 'administrator' and m.ended_at is null limit 1`,
    values: [db.clubId],
  })
  return rows.length > 0
}

async function updatePerson(db: ClubDb, memberId: string, body: PersonEdit, version: number, at: Date): Promise<void> {
  await db.sql.changed({
    name: 'update-person',
    text: `update membership set display_name = $3, version = $4,
             ended_at = case when $5::boolean then coalesce(ended_at, $6) else null end
           where club_id = $1 and member_id = $2`,
    values: [db.clubId, memberId, body.displayName, version, body.left, at],
  })
}
