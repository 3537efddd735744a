import { randomBytes } from 'node:crypto'
import type pg from 'pg'
import { afterAll, inject } from 'vitest'
import { closePools, openPools, type Pools } from '../../apps/api/src/db/pool'
import { ensureDatabaseAccess } from '../../apps/api/src/db/roles'
import { databaseUrl, type TestCluster, withOwner } from './database-cluster'

/** A database of this test worker, migrated and otherwise empty. */
export type TestDatabase = {
  /** As superuser, past every wall: to prepare what the API would not do, and to look behind it. */
  readonly ownerUrl: string
  readonly appUrl: string
  readonly identityUrl: string
  readonly signerUrl: string
}

let ownDatabase: Promise<TestDatabase> | null = null

/** The worker's database, copied once and kept from file to file: every test in it uses a club of its own. */
export function testDatabase(): Promise<TestDatabase> {
  ownDatabase ??= copyTemplate(inject('testCluster'), process.env.VITEST_POOL_ID ?? '0')
  return ownDatabase
}

/** A database for one test alone, for tests that alter tables, policies or grants. Drop it at the end. */
export async function freshDatabase(): Promise<TestDatabase & { drop(): Promise<void> }> {
  const cluster = inject('testCluster')
  const database = await copyTemplate(cluster, `own_${randomBytes(6).toString('hex')}`)
  const name = new URL(database.ownerUrl).pathname.slice(1)
  const drop = () =>
    withOwner(cluster.ownerUrl, async (owner) => {
      await owner.query(`drop database if exists ${name} with (force)`)
    })
  return { ...database, drop }
}

/** The API's pools on the worker's database, closed when the test file ends. */
export async function testPools(): Promise<Pools> {
  const { appUrl, identityUrl } = await testDatabase()
  const settings = { appUrl, identityUrl, appConnections: 8, identityConnections: 2 }
  const pools = await openPools(settings, (error) => {
    throw error
  })
  afterAll(() => closePools(pools))
  return pools
}

/** One statement as superuser, past every wall. */
export async function asOwner<Row extends pg.QueryResultRow>(
  database: TestDatabase,
  text: string,
  values: readonly unknown[] = [],
): Promise<readonly Row[]> {
  return withOwner(database.ownerUrl, async (owner) => (await owner.query<Row>(text, [...values])).rows)
}

/** A new club id: a UUID of version 7, as the clients make them. */
export function freshClubId(): string {
  return freshId()
}

export function freshId(): string {
  const bytes = randomBytes(16)
  bytes.writeUIntBE(Date.now(), 0, 6)
  bytes[6] = (bytes[6]! & 0x0f) | 0x70
  bytes[8] = (bytes[8]! & 0x3f) | 0x80
  const hex = bytes.toString('hex')
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-')
}

async function copyTemplate(cluster: TestCluster, suffix: string): Promise<TestDatabase> {
  const name = `${cluster.template}_${suffix}`
  await withOwner(cluster.ownerUrl, async (owner) => {
    const known = await owner.query('select from pg_database where datname = $1', [name])
    if (known.rowCount === 0) {
      await owner.query(`create database ${name} template ${cluster.template} strategy wal_log`)
    }
  })
  const ownerUrl = databaseUrl(cluster.ownerUrl, name)
  // Who may connect is not copied with a template.
  await withOwner(ownerUrl, ensureDatabaseAccess)
  const as = (role: keyof TestCluster['passwords']) => {
    const url = new URL(ownerUrl)
    url.username = role
    url.password = cluster.passwords[role] ?? ''
    return url.href
  }
  return {
    ownerUrl,
    appUrl: as('espalier_app'),
    identityUrl: as('espalier_identity'),
    signerUrl: as('espalier_signer'),
  }
}
