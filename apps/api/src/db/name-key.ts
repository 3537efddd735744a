import { createHmac, timingSafeEqual } from 'node:crypto'
import type { ClientBase, Pool } from 'pg'
import { MIGRATION_ROLE } from './roles'

/** The key of children's names is not the one that this database's names were sealed with. */
export class NameKeyError extends Error {
  override readonly name = 'NameKeyError'
}

const OTHER_KEY = `The key of the children's names is not the one this database was made with, so no name could be read.
Nothing was started and nothing in the database was changed. The key is "keyEncryptionKey" in secrets.json of the data
folder (ESPALIER_DATA), or what ESPALIER_KEK says instead. Put the secrets.json that belongs to this database back, or set
ESPALIER_KEK to its key, and start again. Where the key is lost for good its names are too: start with an empty database.`

const NO_CHECK =
  'The database does not say which key its names were sealed with: prepare it first (apps/api/dist/migrate.js).'

/** What only this key can make; it tells nothing of the key, which is 256 random bits. */
export function nameKeyMac(key: Buffer): Buffer {
  return createHmac('sha256', key).update('espalier: the key that wraps the keys of names').digest()
}

/** Before anything else is done to a database as its owner: refuses another key; a new database takes any. */
export async function refuseOtherNameKey(owner: ClientBase, key: Buffer): Promise<void> {
  const { rows } = await owner.query<{ known: boolean }>(
    "select to_regclass('public.name_key_check') is not null as known",
  )
  if (rows[0]?.known !== true) return
  const mac = await asMigrationRole(owner, () => findMac(owner))
  if (mac !== null) compare(mac, key)
}

/** After the migrations: keeps the first key's value. Of two first starts at once one is first, and the other is told. */
export async function keepNameKey(owner: ClientBase, key: Buffer): Promise<void> {
  const mac = await asMigrationRole(owner, async () => {
    await owner.query('insert into public.name_key_check (mac) values ($1) on conflict do nothing', [nameKeyMac(key)])
    return findMac(owner)
  })
  if (mac !== null) compare(mac, key)
}

/** Before a process serves: what it would seal must open again, and what is sealed must open. */
export async function requireNameKey(app: Pool, key: Buffer): Promise<void> {
  const mac = await findMac(app)
  if (mac === null) throw new NameKeyError(NO_CHECK)
  compare(mac, key)
}

async function findMac(client: ClientBase | Pool): Promise<Buffer | null> {
  const { rows } = await client.query<{ mac: Buffer }>('select mac from public.name_key_check')
  return rows[0]?.mac ?? null
}

function compare(mac: Buffer, key: Buffer): void {
  if (!timingSafeEqual(mac, nameKeyMac(key))) throw new NameKeyError(OTHER_KEY)
}

/** The owner of a database need not be a superuser, and owns none of its tables. */
async function asMigrationRole<Value>(owner: ClientBase, work: () => Promise<Value>): Promise<Value> {
  await owner.query(`set role ${MIGRATION_ROLE}`)
  try {
    return await work()
  } finally {
    await owner.query('reset role')
  }
}
