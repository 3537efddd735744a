import { ok } from '@espalier/domain/quantities'
import { withClub } from '../../db/with-club'
import type { Deps } from '../../deps'
import { revokeLoginsOf } from '../../http/logins'
import { LINK_LIFE_MILLISECONDS } from './links'

type AccountRow = { readonly account_id: string; readonly left: boolean; readonly expires_at: Date | null }

/**
 * Ends the logins of somebody who has left, or those made before the newest link: a lost phone must not stay signed in
 * beside the new one. It runs after the club's commit and again with every repeat of the command, so that a failure
 * between the two is mended by sending the command again; logins made since with the new link stay.
 */
export async function endLogins(deps: Deps, clubId: string, memberId: string): Promise<void> {
  const { value: found } = await withClub(deps.pools, clubId, async (db) => {
    const rows = await db.sql.rows<AccountRow>({
      name: 'find-account-of-member',
      text: `select account_id, ended_at is not null as left,
               (select max(expires_at) from sign_in_link l where l.club_id = m.club_id and l.member_id = m.member_id)
                 as expires_at
             from membership m where club_id = $1 and member_id = $2`,
      values: [db.clubId, memberId],
    })
    return ok(rows[0] ?? null)
  })
  if (found === null) return
  const now = deps.now()
  const linkMade = found.expires_at === null ? null : found.expires_at.getTime() - LINK_LIFE_MILLISECONDS
  const madeUntil = found.left ? now : linkMade
  if (madeUntil !== null) await revokeLoginsOf(deps.pools.identity, found.account_id, madeUntil, now)
}
