import type { ClientBase } from 'pg'

/** Who logs in to the database: the API for clubs, the API for sign-in, and the signer. */
export const RUNTIME_ROLES = ['espalier_app', 'espalier_identity', 'espalier_signer'] as const
export type RuntimeRole = (typeof RUNTIME_ROLES)[number]
/** null: the role exists, but nobody logs in with it yet. */
export type RolePasswords = Readonly<Record<RuntimeRole, string | null>>

/** Owns every table and passes the clubs' walls, because a back-fill that sees no rows would silently change none. */
export const MIGRATION_ROLE = 'espalier_migrate'

// A stuck statement, a lock held by somebody else and a forgotten transaction each end by themselves.
const ROLE_SETTINGS = [
  ['statement_timeout', '10s'],
  ['lock_timeout', '2s'],
  ['idle_in_transaction_session_timeout', '15s'],
  ['default_transaction_isolation', 'read committed'],
  ['timezone', 'UTC'],
] as const

/** Creates the four roles of this server where they are missing, and sets their passwords, limits and attributes. */
export async function ensureRoles(owner: ClientBase, passwords: RolePasswords): Promise<void> {
  await ensureRole(owner, MIGRATION_ROLE)
  await owner.query(
    `alter role ${MIGRATION_ROLE} with nologin nosuperuser nocreatedb nocreaterole noreplication bypassrls`,
  )
  for (const role of RUNTIME_ROLES) {
    await ensureRole(owner, role)
    const password = passwords[role]
    await owner.query(
      `alter role ${role} with nosuperuser nocreatedb nocreaterole noinherit noreplication nobypassrls
       ${password === null ? 'nologin password null' : `login password ${owner.escapeLiteral(password)}`}`,
    )
    for (const [setting, value] of ROLE_SETTINGS) {
      await owner.query(`alter role ${role} set ${setting} = ${owner.escapeLiteral(value)}`)
    }
  }
}

/** Takes from everybody what PostgreSQL gives everybody in a new database, and gives the roles what they need. */
export async function ensureDatabaseAccess(owner: ClientBase): Promise<void> {
  const { rows } = await owner.query<{ name: string }>('select current_database() as name')
  const database = owner.escapeIdentifier(rows[0]!.name)
  await owner.query(`revoke all on database ${database} from public`)
  await owner.query('revoke all on schema public from public')
  await owner.query(`grant connect, create on database ${database} to ${MIGRATION_ROLE}`)
  await owner.query(`grant usage, create on schema public to ${MIGRATION_ROLE}`)
  await owner.query('grant usage on schema public to espalier_app, espalier_signer')
  for (const role of RUNTIME_ROLES) await owner.query(`grant connect on database ${database} to ${role}`)
  await owner.query(KEEP_LARGE_OBJECTS_BACK)
}

/**
 * Large objects stand beside every table, and no wall between clubs holds for them; everybody may make and read them in
 * a new database. Here nobody does. Once taken away nothing is altered again, because two starts at once would collide.
 */
const KEEP_LARGE_OBJECTS_BACK = `
  do $$ declare each_function regprocedure; begin
    for each_function in
      select p.oid from pg_proc p, aclexplode(coalesce(p.proacl, acldefault('f', p.proowner))) g
      where p.pronamespace = 'pg_catalog'::regnamespace and g.grantee = 0
        and (p.proname like 'lo\\_%' or p.proname in ('loread', 'lowrite'))
    loop
      execute format('revoke execute on function %s from public', each_function);
    end loop;
  end $$`

async function ensureRole(owner: ClientBase, role: string): Promise<void> {
  const { rowCount } = await owner.query('select from pg_roles where rolname = $1', [role])
  if (rowCount === 0) await owner.query(`create role ${role}`)
}
