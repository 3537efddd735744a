import pg from 'pg'
import { afterAll, describe, expect, test } from 'vitest'
import { asOwner, freshDatabase } from '../../../../tests/support/database'

const database = await freshDatabase()
afterAll(() => database.drop())

const STATEMENTS = [
  'select lo_create(0)',
  'select lo_creat(-1)',
  "select lo_from_bytea(0, 'x')",
  "select lo_import('/etc/hostname')",
  "select lo_export(1, '/nowhere')",
  'select lo_open(1, 131072)',
  'select loread(0, 1)',
  "select lowrite(0, 'x')",
  'select lo_get(1)',
  "select lo_put(1, 0, 'x')",
  'select lo_unlink(1)',
]

/** What of it this role may do: each statement that is not refused for want of a right. */
async function listAllowed(url: string): Promise<readonly string[]> {
  const client = new pg.Client({ connectionString: url })
  await client.connect()
  const allowed: string[] = []
  for (const statement of STATEMENTS) {
    const refusal = await client.query(statement).then(
      () => null,
      (error: pg.DatabaseError) => error.code ?? null,
    )
    if (refusal !== INSUFFICIENT_PRIVILEGE) allowed.push(statement)
  }
  await client.end()
  return allowed
}

const INSUFFICIENT_PRIVILEGE = '42501'

describe('large objects, for which no wall between clubs holds,', () => {
  test.each(['app', 'identity', 'signer'] as const)('are out of reach of espalier_%s', async (role) => {
    expect(await listAllowed(database[`${role}Url`])).toEqual([])
  })

  test('control: what PostgreSQL gives everybody in a new database lets a role make one', async () => {
    await asOwner(database, 'grant execute on function lo_create(oid), lo_from_bytea(oid, bytea) to public')
    expect(await listAllowed(database.appUrl)).toEqual(['select lo_create(0)', "select lo_from_bytea(0, 'x')"])
  })
})
