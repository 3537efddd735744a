import type { Me } from '@espalier/contract/sign-in'
import { ok } from '@espalier/domain/quantities'
import { type ClubDb, withClub } from '../../db/with-club'
import type { Deps } from '../../deps'
import { type Login, listClubIds } from '../../http/logins'

type ClubOfMe = Me['clubs'][number]

/** Who is signed in, in every club where a membership stands. Each club is read behind its own wall. */
export async function findMe(deps: Deps, login: Login): Promise<Me> {
  const clubs: ClubOfMe[] = []
  for (const clubId of await listClubIds(deps.pools.identity, login.accountId)) {
    const found = await withClub(deps.pools, clubId, async (db) => ok(await findClubOfMe(db, login.accountId)))
    if (found.ok && found.value !== null) clubs.push(found.value)
  }
  return { accountId: login.accountId, clubs }
}

type MeRow = {
  readonly member_id: string
  readonly display_name: string
  readonly name: string
  readonly demo: boolean
  readonly roles: ClubOfMe['roles']
}

async function findClubOfMe(db: ClubDb, accountId: string): Promise<ClubOfMe | null> {
  const rows = await db.sql.rows<MeRow>({
    name: 'find-club-of-me',
    text: `select m.member_id, m.display_name, c.name, c.demo,
             coalesce((select json_agg(json_build_object('role', r.role, 'teamId', r.team_id, 'teamName', t.name)
                                       order by r.role, t.name)
                       from member_role r left join team t on t.club_id = r.club_id and t.team_id = r.team_id
                       where r.club_id = m.club_id and r.member_id = m.member_id), '[]') as roles
           from membership m join club c using (club_id)
           where m.club_id = $1 and m.account_id = $2 and m.ended_at is null`,
    values: [db.clubId, accountId],
  })
  const row = rows[0]
  if (row === undefined) return null
  return {
    clubId: db.clubId,
    name: row.name,
    demo: row.demo,
    memberId: row.member_id,
    displayName: row.display_name,
    roles: row.roles,
  }
}
