import type { MemberRole } from '@espalier/domain/access'
import { roleReach } from '@espalier/domain/access'
import type { ClubDb } from '../../db/with-club'
import type { ProblemPointer } from '../../http/problem-error'

export type LockedPerson = {
  readonly memberId: string
  readonly displayName: string
  readonly version: number
  readonly left: boolean
  readonly roles: readonly MemberRole[]
}

type PersonRow = {
  readonly member_id: string
  readonly display_name: string
  readonly version: number
  readonly ended_at: Date | null
}

export async function hasPerson(db: ClubDb, memberId: string): Promise<boolean> {
  const rows = await db.sql.rows({
    name: 'has-person',
    text: 'select 1 from membership where club_id = $1 and member_id = $2',
    values: [db.clubId, memberId],
  })
  return rows.length > 0
}

/** Holds a membership against every command of that person, because roles are about to change. */
export async function lockPerson(db: ClubDb, memberId: string): Promise<LockedPerson | null> {
  const rows = await db.sql.rows<PersonRow>({
    name: 'lock-person',
    text: `select member_id, display_name, version, ended_at from membership
           where club_id = $1 and member_id = $2 for update`,
    values: [db.clubId, memberId],
  })
  return personOf(db, rows)
}

/** Holds a membership against its change and against a second link, while that person's own commands go on. */
export async function holdPerson(db: ClubDb, memberId: string): Promise<LockedPerson | null> {
  const rows = await db.sql.rows<PersonRow>({
    name: 'hold-person',
    text: `select member_id, display_name, version, ended_at from membership
           where club_id = $1 and member_id = $2 for no key update`,
    values: [db.clubId, memberId],
  })
  return personOf(db, rows)
}

async function personOf(db: ClubDb, [row]: readonly PersonRow[]): Promise<LockedPerson | null> {
  if (row === undefined) return null
  const roles = await db.sql.rows<{ role: MemberRole['role']; team_id: string | null }>({
    name: 'list-person-roles',
    text: 'select role, team_id from member_role where club_id = $1 and member_id = $2 order by role, team_id',
    values: [db.clubId, row.member_id],
  })
  return {
    memberId: row.member_id,
    displayName: row.display_name,
    version: row.version,
    left: row.ended_at !== null,
    roles: roles.map(({ role, team_id }) => ({ role, teamId: team_id })),
  }
}

export async function insertMembership(
  db: ClubDb,
  membership: { readonly memberId: string; readonly accountId: string; readonly displayName: string },
): Promise<void> {
  await db.sql.changed({
    name: 'insert-membership',
    text: 'insert into membership (club_id, member_id, account_id, display_name) values ($1, $2, $3, $4)',
    values: [db.clubId, membership.memberId, membership.accountId, membership.displayName],
  })
}

/** Replaces all roles of a person. */
export async function writeRoles(
  db: ClubDb,
  memberId: string,
  roles: readonly MemberRole[],
  newId: () => string,
): Promise<void> {
  await db.sql.changed({
    name: 'delete-roles',
    text: 'delete from member_role where club_id = $1 and member_id = $2',
    values: [db.clubId, memberId],
  })
  await db.sql.changed({
    name: 'insert-roles',
    text: `insert into member_role (club_id, member_role_id, member_id, role, team_id)
           select $1, id, $2, role, team from unnest($3::uuid[], $4::text[], $5::uuid[]) as new (id, role, team)`,
    values: [db.clubId, memberId, roles.map(newId), roles.map(({ role }) => role), roles.map(({ teamId }) => teamId)],
  })
}

/** What is wrong with a list of roles: a team where none belongs, none where one does, an unknown one, or the same twice. */
export async function listRoleFaults(db: ClubDb, roles: readonly MemberRole[]): Promise<readonly ProblemPointer[]> {
  const teamIds = roles.flatMap(({ teamId }) => teamId ?? [])
  const known = await db.sql.rows<{ team_id: string }>({
    name: 'list-known-teams',
    text: 'select team_id from team where club_id = $1 and team_id = any($2) for key share',
    values: [db.clubId, teamIds],
  })
  const knownIds = new Set(known.map(({ team_id }) => team_id))
  const seen = new Set<string>()
  return roles.flatMap((held, index): readonly ProblemPointer[] => {
    const name = `${held.role}/${held.teamId ?? ''}`
    const twice = seen.has(name)
    seen.add(name)
    if (twice) return [{ pointer: `/roles/${index}`, detail: 'is given twice', code: 'identifier-twice' }]
    const needsTeam = roleReach[held.role] === 'team'
    if (needsTeam && held.teamId === null)
      return [{ pointer: `/roles/${index}/teamId`, detail: 'this role serves one team' }]
    if (!needsTeam && held.teamId !== null)
      return [{ pointer: `/roles/${index}/teamId`, detail: 'this role serves the whole club' }]
    if (held.teamId !== null && !knownIds.has(held.teamId))
      return [{ pointer: `/roles/${index}/teamId`, detail: 'is no team of this club', code: 'reference-unknown' }]
    return []
  })
}

/** Role names for the record book, each once, in order. */
export function roleFact(roles: readonly MemberRole[]): string | null {
  const names = [...new Set(roles.map(({ role }) => role))].sort()
  return names.length === 0 ? null : names.join('.')
}
