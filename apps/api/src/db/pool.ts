import { assert } from '@espalier/domain/quantities'
import pg from 'pg'

/** The two ways the API logs in: for clubs, behind their walls, and for sign-in. Neither reads what the other may. */
export type Pools = { readonly app: pg.Pool; readonly identity: pg.Pool }

export type PoolSettings = {
  readonly appUrl: string
  readonly identityUrl: string
  readonly appConnections: number
  readonly identityConnections: number
}

/** The role of a pool is too strong: the walls between clubs would not hold against it. */
export class UnsafeRoleError extends Error {
  override readonly name = 'UnsafeRoleError'
}

/** Opens both pools, and refuses where a role could pass a club's wall. */
export async function openPools(settings: PoolSettings, onIdleError: (error: Error) => void): Promise<Pools> {
  const app = openPool(settings.appUrl, settings.appConnections, 'espalier-api')
  const identity = openPool(settings.identityUrl, settings.identityConnections, 'espalier-identity')
  for (const pool of [app, identity]) pool.on('error', onIdleError)
  try {
    await refuseUnsafeRole(app)
    await refuseUnsafeRole(identity)
  } catch (error) {
    await closePools({ app, identity })
    throw error
  }
  return { app, identity }
}

export async function closePools(pools: Pools): Promise<void> {
  await Promise.all([pools.app.end(), pools.identity.end()])
}

function openPool(connectionString: string, max: number, applicationName: string): pg.Pool {
  return new pg.Pool({
    connectionString,
    max,
    application_name: applicationName,
    connectionTimeoutMillis: 5_000,
    idleTimeoutMillis: 60_000,
    // Longer than the role's own statement_timeout: it ends only what the server can no longer answer.
    query_timeout: 15_000,
    keepAlive: true,
    types: { getTypeParser },
  })
}

const DATE = 1082
const BIGINT = 20

/** A date stays the text YYYY-MM-DD, because a JavaScript Date would move it by the process's zone; a bigint is a safe number. */
function getTypeParser(type: number, format?: 'text' | 'binary') {
  if (format !== 'binary' && type === DATE) return (value: string) => value
  if (format !== 'binary' && type === BIGINT) return readSafeInteger
  return format === 'binary' ? pg.types.getTypeParser(type, 'binary') : pg.types.getTypeParser(type, 'text')
}

function readSafeInteger(text: string): number {
  const value = Number(text)
  assert(Number.isSafeInteger(value), 'a bigint from the database must be a safe integer')
  return value
}

// Membership counts too: a role that can become a stronger one is as strong.
const STRENGTH = `
  select current_user as role,
         bool_or(r.rolsuper) as superuser,
         bool_or(r.rolbypassrls) as bypasses,
         bool_or(exists (select from pg_class c where c.relowner = r.oid and c.relkind in ('r', 'p', 'v', 'm', 'S'))) as owns
  from pg_roles r
  where pg_has_role(current_user, r.oid, 'MEMBER')`

type Strength = {
  readonly role: string
  readonly superuser: boolean
  readonly bypasses: boolean
  readonly owns: boolean
}

/** Throws where the pool's role is a superuser, owns a table or passes row security. */
export async function refuseUnsafeRole(pool: pg.Pool): Promise<void> {
  const { rows } = await pool.query<Strength>(STRENGTH)
  const { role, superuser, bypasses, owns } = rows[0]!
  const reason = superuser
    ? 'is a superuser'
    : bypasses
      ? 'passes row security (BYPASSRLS)'
      : owns
        ? 'owns tables'
        : null
  if (reason) throw new UnsafeRoleError(`the database role ${role} ${reason}: use espalier_app and espalier_identity`)
}
