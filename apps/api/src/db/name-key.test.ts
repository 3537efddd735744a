import { randomBytes } from 'node:crypto'
import { join } from 'node:path'
import pg from 'pg'
import { afterAll, expect, inject, test } from 'vitest'
import { asOwner, freshDatabase } from '../../../../tests/support/database'
import { withOwner } from '../../../../tests/support/database-cluster'
import { startDeps } from '../start-deps'
import { describeCatalogue } from './catalogue'
import { readMigrations } from './migrate'
import { keepNameKey, NameKeyError, nameKeyMac } from './name-key'
import { closePools } from './pool'
import { prepareDatabase } from './prepare-database'

const database = await freshDatabase()
afterAll(() => database.drop())
const { passwords } = inject('testCluster')
const migrations = readMigrations(join(import.meta.dirname, '../../../../prisma/migrations'))
const [key, other] = [randomBytes(32), randomBytes(32)]

const prepare = (keyEncryptionKey: Buffer, changed = {}) =>
  withOwner(database.ownerUrl, (owner) =>
    prepareDatabase(owner, { passwords, migrations, keyEncryptionKey, ...changed }),
  )

/** Starts what every program of the API starts with. */
async function startWith(keyEncryptionKey: Buffer): Promise<string> {
  const { appUrl, identityUrl } = database
  const connections = { appConnections: 1, identityConnections: 1 }
  const deps = await startDeps({ appUrl, identityUrl, ...connections, keyEncryptionKey, origin: 'https://club.test' })
  await closePools(deps.pools)
  return 'started'
}

async function everything(): Promise<unknown> {
  const catalogue = await withOwner(database.ownerUrl, describeCatalogue)
  const roles = await asOwner(database, "select * from pg_authid where rolname like 'espalier%' order by rolname")
  const applied = await asOwner(database, 'select * from schema_migration order by name')
  const checks = await asOwner(database, 'select * from name_key_check')
  return { catalogue, roles, applied, checks }
}

test('a program does not start on a database that remembers no key', async () => {
  await expect(startWith(key)).rejects.toThrow('prepare it first')
})

test('the first key is remembered, by a value that does not hold it, and starts again', async () => {
  expect(await prepare(key)).toEqual([])
  expect(await prepare(key)).toEqual([])
  expect(await startWith(key)).toBe('started')
  const rows = await asOwner<{ mac: Buffer }>(database, 'select mac from name_key_check')
  expect(rows).toEqual([{ mac: nameKeyMac(key) }])
  expect(rows[0]?.mac.equals(key)).toBe(false)
})

test('another key is refused with what to do, and nothing is changed: no password, no table, no grant', async () => {
  const before = await everything()
  const later = { name: '20991231000000_later', text: 'create table later (club_id uuid)', sha256: '00' }
  const lost = {
    espalier_app: 'a-password-made-anew',
    espalier_identity: 'a-password-made-anew',
    espalier_signer: null,
  }
  const refused = prepare(other, { passwords: lost, migrations: [...migrations, later] })
  await expect(refused).rejects.toThrow(NameKeyError)
  await expect(refused).rejects.toThrow('Put the secrets.json that belongs to this database back')
  expect(await everything()).toEqual(before)
  await expect(startWith(other)).rejects.toThrow(NameKeyError)
  expect(await startWith(key)).toBe('started')
})

test('the runtime roles cannot change which key is remembered', async () => {
  for (const url of [database.appUrl, database.identityUrl, database.signerUrl]) {
    const client = new pg.Client({ connectionString: url })
    await client.connect()
    for (const statement of ["update public.name_key_check set mac = ''", 'delete from public.name_key_check']) {
      await expect(client.query(statement)).rejects.toThrow('permission denied')
    }
    await client.end()
  }
})

test('of two first starts at once with different keys one is told that it has the wrong one', async () => {
  await asOwner(database, 'delete from name_key_check')
  const keep = (mine: Buffer) => withOwner(database.ownerUrl, (owner) => keepNameKey(owner, mine))
  const outcomes = await Promise.allSettled([keep(key), keep(other)])
  expect(outcomes.map(({ status }) => status).toSorted()).toEqual(['fulfilled', 'rejected'])
})

test('control: where the remembered value is taken away, the other key is let in', async () => {
  await asOwner(database, 'delete from name_key_check')
  await prepare(other)
  expect(await startWith(other)).toBe('started')
})
