import type { Person } from '@espalier/contract/people'
import type { ClubDb } from '../../db/with-club'

export type PersonRow = {
  readonly member_id: string
  readonly display_name: string
  readonly version: number
  readonly left: boolean
  readonly roles: Person['roles']
  readonly link_used: boolean
  readonly link_waits: boolean
}

/** People of the club, or those who serve the given teams. */
export function listPeople(db: ClubDb, teamIds: readonly string[] | null, at: Date): Promise<readonly PersonRow[]> {
  return db.sql.rows<PersonRow>({
    name: 'list-people',
    text: `select m.member_id, m.display_name, m.version, m.ended_at is not null as left,
             coalesce((select json_agg(json_build_object('role', r.role, 'teamId', r.team_id) order by r.role, r.team_id)
                       from member_role r where r.club_id = m.club_id and r.member_id = m.member_id), '[]') as roles,
             exists (select from sign_in_link l where l.club_id = m.club_id and l.member_id = m.member_id
                     and l.used_at is not null) as link_used,
             exists (select from sign_in_link l where l.club_id = m.club_id and l.member_id = m.member_id
                     and l.used_at is null and l.revoked_at is null and l.expires_at > $3) as link_waits
           from membership m
           where m.club_id = $1 and ($2::uuid[] is null or exists (
             select from member_role r
             where r.club_id = m.club_id and r.member_id = m.member_id and r.team_id = any($2)))
           order by m.display_name, m.member_id`,
    values: [db.clubId, teamIds, at],
  })
}
