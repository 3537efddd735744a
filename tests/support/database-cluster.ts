import { randomBytes } from 'node:crypto'
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import type { TestProject } from 'vitest/node'
import { migrate, readMigrations } from '../../apps/api/src/db/migrate'
import { ensureDatabaseAccess, ensureRoles, type RolePasswords } from '../../apps/api/src/db/roles'
import { endPostgres, startPostgres } from '../../apps/local/postgres.mjs'

/** One PostgreSQL for a test run: where it is, and who may log in. */
export type TestCluster = {
  /** As superuser, to the database named postgres. */
  readonly ownerUrl: string
  readonly passwords: RolePasswords
  /** A migrated, empty database that each worker copies. */
  readonly template: string
}

declare module 'vitest' {
  export interface ProvidedContext {
    testCluster: TestCluster
  }
}

const RUNS = join(tmpdir(), 'espalier-test-runs')

/** Vitest calls this once a run, before any worker, and what it returns at the end. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const cluster = await startTestCluster()
  project.provide('testCluster', cluster.cluster)
  return cluster.stop
}

export async function startTestCluster(): Promise<{ readonly cluster: TestCluster; stop(): Promise<void> }> {
  const other = process.env.ESPALIER_TEST_DATABASE_URL
  const server = other === undefined ? await startOwnServer() : { ownerUrl: other, stop: async () => {} }
  const passwords = { espalier_app: secret(), espalier_identity: secret(), espalier_signer: secret() }
  const template = `espalier_template_${process.pid}`
  try {
    await createTemplate(server.ownerUrl, template, passwords)
  } catch (error) {
    await server.stop()
    throw error
  }
  return {
    cluster: { ownerUrl: server.ownerUrl, passwords, template },
    stop: async () => {
      if (other !== undefined) await dropDatabasesOf(other, template)
      await server.stop()
    },
  }
}

/** A server of this run alone. It keeps nothing, so it may skip every wait for the disk. */
async function startOwnServer() {
  mkdirSync(RUNS, { recursive: true })
  for (const name of readdirSync(RUNS)) await removeAbandonedRun(join(RUNS, name))
  const folder = mkdtempSync(join(RUNS, 'run-'))
  const password = secret()
  // As root, the server's own user must be able to pass through.
  chmodSync(folder, 0o755)
  writeFileSync(join(folder, 'run.pid'), String(process.pid))
  const settings = { fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off', max_connections: '200' }
  const server = await startPostgres({
    folder: join(folder, 'postgres'),
    password,
    settings,
    initArguments: ['--no-sync'],
  })
  return {
    ownerUrl: server.urlOf('postgres'),
    stop: async () => {
      await server.stop()
      removeFolders(folder, server.folder)
    },
  }
}

/** A run that was killed leaves its server and its folder; the next run ends both, and of two at once only one does. */
async function removeAbandonedRun(folder: string): Promise<void> {
  if (readPid(folder, 'run.pid') === null || isAlive(readPid(folder, 'run.pid'))) return
  if (isAlive(readPid(folder, 'ending.pid'))) return
  try {
    rmSync(join(folder, 'ending.pid'), { force: true })
    writeFileSync(join(folder, 'ending.pid'), String(process.pid), { flag: 'wx' })
  } catch {
    return
  }
  removeFolders(folder, await endPostgres(join(folder, 'postgres')))
}

function readPid(folder: string, name: string): number | null {
  try {
    return Number(readFileSync(join(folder, name), 'utf8'))
  } catch {
    return null
  }
}

function isAlive(pid: number | null): boolean {
  if (pid === null) return false
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}

function removeFolders(...folders: readonly string[]): void {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true })
}

async function createTemplate(ownerUrl: string, template: string, passwords: RolePasswords): Promise<void> {
  await withOwner(ownerUrl, async (owner) => {
    await ensureRoles(owner, passwords)
    await owner.query(`create database ${template} template template0`)
  })
  await withOwner(databaseUrl(ownerUrl, template), async (owner) => {
    await ensureDatabaseAccess(owner)
    await migrate(owner, readMigrations(join(import.meta.dirname, '../../prisma/migrations')))
  })
}

async function dropDatabasesOf(ownerUrl: string, template: string): Promise<void> {
  await withOwner(ownerUrl, async (owner) => {
    const { rows } = await owner.query<{ name: string }>(
      "select datname as name from pg_database where datname = $1 or datname like $1 || '\\_%'",
      [template],
    )
    for (const { name } of rows) await owner.query(`drop database if exists ${name} with (force)`)
  })
}

export async function withOwner<Value>(url: string, work: (owner: pg.Client) => Promise<Value>): Promise<Value> {
  const owner = new pg.Client({ connectionString: url })
  await owner.connect()
  try {
    return await work(owner)
  } finally {
    await owner.end()
  }
}

/** The same server and login, another database. */
export function databaseUrl(url: string, database: string): string {
  const parts = new URL(url)
  parts.pathname = `/${database}`
  return parts.href
}

function secret(): string {
  return randomBytes(24).toString('base64url')
}
