import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type ClubDb, withClub } from '../../db/with-club'
import type { Deps } from '../../deps'
import { hashToken, makeLoginToken } from '../../http/login-cookie'
import { createLogin } from '../../http/logins'
import type { Refusal } from '../../http/problem-error'

type LinkRow = { readonly link_id: string; readonly account_id: string }

/**
 * Uses a one-time link up and makes a login. The link's row is held to the end: of many presses at once one wins. The
 * login is made first, in the identity's own transaction; if using up the link then fails, nobody holds its token.
 */
export async function signIn(
  deps: Deps,
  link: { readonly clubId: string; readonly token: string },
): Promise<Result<{ readonly token: string; readonly clubId: string }, Refusal>> {
  return withClub(deps.pools, link.clubId, async (db): Promise<Result<{ token: string; clubId: string }, Refusal>> => {
    const now = deps.now()
    const found = await lockLink(db, hashToken(link.token), new Date(now))
    if (found === null) return refuse({ code: 'link-not-valid' })
    const token = makeLoginToken()
    await createLogin(deps.pools.identity, {
      accountId: found.account_id,
      clubId: link.clubId,
      tokenHash: hashToken(token),
      familyId: deps.newId(),
      now,
    })
    await markUsed(db, found.link_id, new Date(now))
    return ok({ token, clubId: link.clubId })
  })
}

async function lockLink(db: ClubDb, tokenHash: Buffer, at: Date): Promise<LinkRow | null> {
  const rows = await db.sql.rows<LinkRow>({
    name: 'lock-sign-in-link',
    text: `select l.link_id, m.account_id
           from sign_in_link l join membership m using (club_id, member_id)
           where l.club_id = $1 and l.token_hash = $2 and l.used_at is null and l.revoked_at is null
             and l.expires_at > $3 and m.ended_at is null
           for update of l`,
    values: [db.clubId, tokenHash, at],
  })
  return rows[0] ?? null
}

async function markUsed(db: ClubDb, linkId: string, at: Date): Promise<void> {
  await db.sql.changed({
    name: 'use-sign-in-link',
    text: 'update sign_in_link set used_at = $3 where club_id = $1 and link_id = $2',
    values: [db.clubId, linkId, at],
  })
}
