import type { Member } from '@espalier/domain/access'
import type { ClubDb } from '../db/with-club'

type MembershipRow = { readonly member_id: string }
type RoleRow = { readonly role: Member['roles'][number]['role']; readonly team_id: string | null }

type MemberRow = MembershipRow & { readonly roles: Member['roles'] }

/** The member behind an account, for reading. Null where the account is no member: then nothing of the club exists. */
export async function findMember(db: ClubDb, accountId: string): Promise<Member | null> {
  const rows = await db.sql.rows<MemberRow>({
    name: 'find-member',
    text: `select m.member_id, coalesce(
             (select json_agg(json_build_object('role', r.role, 'teamId', r.team_id) order by r.role, r.team_id)
              from member_role r where r.club_id = m.club_id and r.member_id = m.member_id), '[]') as roles
           from membership m where m.club_id = $1 and m.account_id = $2 and m.ended_at is null`,
    values: [db.clubId, accountId],
  })
  const row = rows[0]
  return row === undefined ? null : { memberId: row.member_id, clubId: db.clubId, roles: row.roles }
}

/**
 * The same for a command: the row is held, so that nobody's roles change while the command is under way. Roles are read
 * after the lock, in a statement of their own, which sees what the change that was waited for has left.
 */
export async function lockMember(db: ClubDb, accountId: string): Promise<Member | null> {
  const rows = await db.sql.rows<MembershipRow>({
    name: 'lock-membership',
    text: 'select member_id from membership where club_id = $1 and account_id = $2 and ended_at is null for key share',
    values: [db.clubId, accountId],
  })
  return rows[0] === undefined ? null : readMember(db, rows[0].member_id)
}

async function readMember(db: ClubDb, memberId: string): Promise<Member> {
  const roles = await db.sql.rows<RoleRow>({
    name: 'list-member-roles',
    text: 'select role, team_id from member_role where club_id = $1 and member_id = $2 order by role, team_id',
    values: [db.clubId, memberId],
  })
  return { memberId, clubId: db.clubId, roles: roles.map(({ role, team_id }) => ({ role, teamId: team_id })) }
}
