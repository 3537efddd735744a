import type pg from 'pg'

/** A signed-in browser: whose it is, and nothing about clubs. */
export type Login = { readonly accountId: string; readonly tokenHash: Buffer }

const DAY_MILLISECONDS = 86_400_000
/**
 * Unused for 14 days or 30 days old, a login ends (habit of the project for one-time links: whoever lost a login has to
 * ask somebody for a link, so a shorter life would only teach people to ask each other for links).
 */
export const LOGIN_IDLE_MILLISECONDS = 14 * DAY_MILLISECONDS
export const LOGIN_MAX_MILLISECONDS = 30 * DAY_MILLISECONDS
/** The idle end is moved at most once in this time, so that reading does not write. */
const TOUCH_AFTER = '1 hour'

type LoginRow = { readonly token: string; readonly account_id: string; readonly keep_until: Date | null }

/**
 * The logins that live behind some tokens' hashes, by the hash in hexadecimal. Throws where the database cannot say:
 * nobody becomes anonymous by that.
 */
export async function findLogins(
  identity: pg.Pool,
  tokenHashes: readonly Buffer[],
  now: number,
): Promise<ReadonlyMap<string, Login>> {
  const idleUntil = now + LOGIN_IDLE_MILLISECONDS
  const { rows } = await identity.query<LoginRow>({
    name: 'find-logins',
    text: `select encode(l.token_hash, 'hex') as token, l.account_id,
             case when least($3, l.ends_at) > l.idle_until + $4::interval then least($3, l.ends_at) end as keep_until
           from identity.login l join identity.account a using (account_id)
           where l.token_hash = any($1::bytea[]) and l.revoked_at is null and l.idle_until > $2 and l.ends_at > $2
             and a.disabled_at is null`,
    values: [tokenHashes, new Date(now), new Date(idleUntil), TOUCH_AFTER],
  })
  const logins = new Map<string, Login>()
  for (const { token, account_id, keep_until } of rows) {
    const tokenHash = Buffer.from(token, 'hex')
    logins.set(token, { accountId: account_id, tokenHash })
    if (keep_until !== null) await moveIdleEnd(identity, tokenHash, keep_until.getTime())
  }
  return logins
}

async function moveIdleEnd(identity: pg.Pool, tokenHash: Buffer, idleUntil: number): Promise<void> {
  await identity.query({
    name: 'move-idle-end',
    text: 'update identity.login set idle_until = $2 where token_hash = $1 and revoked_at is null',
    values: [tokenHash, new Date(idleUntil)],
  })
}

/** Ends one login at once, wherever it is used. */
export async function revokeLogin(identity: pg.Pool, tokenHash: Buffer, now: number): Promise<void> {
  await identity.query({
    name: 'revoke-login',
    text: 'update identity.login set revoked_at = $2 where token_hash = $1 and revoked_at is null',
    values: [tokenHash, new Date(now)],
  })
}

/** Ends every login of an account that was made up to an instant, wherever it is used. */
export async function revokeLoginsOf(
  identity: pg.Pool,
  accountId: string,
  madeUntil: number,
  now: number,
): Promise<void> {
  await identity.query({
    name: 'revoke-logins-of-account',
    text: `update identity.login set revoked_at = $3
           where account_id = $1 and revoked_at is null and ends_at <= $2`,
    // A login keeps its end, and by it the instant at which it was made.
    values: [accountId, new Date(madeUntil + LOGIN_MAX_MILLISECONDS), new Date(now)],
  })
}

export type NewLogin = {
  readonly accountId: string
  readonly clubId: string
  readonly tokenHash: Buffer
  readonly familyId: string
  readonly now: number
}

/** Makes the account where this is its first sign-in, and a login of it; all or nothing. */
export async function createLogin(identity: pg.Pool, login: NewLogin): Promise<void> {
  const client = await identity.connect()
  let broken = false
  try {
    await client.query('begin')
    await client.query('insert into identity.account (account_id) values ($1) on conflict do nothing', [
      login.accountId,
    ])
    await client.query('insert into identity.directory (account_id, club_id) values ($1, $2) on conflict do nothing', [
      login.accountId,
      login.clubId,
    ])
    await client.query(
      `insert into identity.login (token_hash, account_id, family_id, kind, idle_until, ends_at)
       values ($1, $2, $3, 'browser', $4, $5)`,
      [
        login.tokenHash,
        login.accountId,
        login.familyId,
        new Date(login.now + LOGIN_IDLE_MILLISECONDS),
        new Date(login.now + LOGIN_MAX_MILLISECONDS),
      ],
    )
    await client.query('commit')
  } catch (error) {
    await client.query('rollback').catch(() => {
      broken = true
    })
    throw error
  } finally {
    client.release(broken)
  }
}

/** Which clubs to offer to an account; membership inside each club decides what is seen there. */
export async function listClubIds(identity: pg.Pool, accountId: string): Promise<readonly string[]> {
  const { rows } = await identity.query<{ club_id: string }>({
    name: 'list-club-ids',
    text: 'select club_id from identity.directory where account_id = $1 order by club_id',
    values: [accountId],
  })
  return rows.map((row) => row.club_id)
}

/** Every club that somebody has ever signed in to. */
export async function listAllClubIds(identity: pg.Pool): Promise<readonly string[]> {
  const { rows } = await identity.query<{ club_id: string }>({
    name: 'list-all-club-ids',
    text: 'select distinct club_id from identity.directory order by club_id',
  })
  return rows.map((row) => row.club_id)
}
