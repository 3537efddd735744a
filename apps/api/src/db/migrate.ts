import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { ClientBase } from 'pg'
import { MIGRATION_ROLE } from './roles'

export type Migration = { readonly name: string; readonly text: string; readonly sha256: string }

/** The migration files differ from what this database was built with. */
export class MigrationError extends Error {
  override readonly name = 'MigrationError'
}

// Any fixed number: it only keeps two runners of this project apart.
const RUNNER_LOCK = 5_124_111

/** The migrations of a folder, oldest first; each is `<stamp>_<name>/migration.sql`. */
export function readMigrations(folder: string): readonly Migration[] {
  const names = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
  if (names.length === 0) throw new MigrationError(`there are no migrations in ${folder}`)
  return names.map((name) => {
    const text = readFileSync(join(folder, name, 'migration.sql'), 'utf8')
    return { name, text, sha256: createHash('sha256').update(text).digest('hex') }
  })
}

/**
 * Brings the database up to date and returns the names of what it applied. One runner at a time, one transaction a
 * file: an interrupted run leaves whole migrations only. `owner` must be able to act as the migration role.
 */
export async function migrate(owner: ClientBase, migrations: readonly Migration[]): Promise<readonly string[]> {
  await owner.query('select pg_advisory_lock($1)', [RUNNER_LOCK])
  try {
    await owner.query(`set role ${MIGRATION_ROLE}`)
    await owner.query(
      `create table if not exists schema_migration
         (name text primary key, sha256 text not null, applied_at timestamptz not null default now())`,
    )
    const pending = findPending(migrations, await listApplied(owner))
    for (const migration of pending) await applyMigration(owner, migration)
    return pending.map((migration) => migration.name)
  } finally {
    await owner.query('reset role')
    await owner.query('select pg_advisory_unlock($1)', [RUNNER_LOCK])
  }
}

type Applied = { readonly name: string; readonly sha256: string }

async function listApplied(owner: ClientBase): Promise<readonly Applied[]> {
  const { rows } = await owner.query<Applied>('select name, sha256 from schema_migration order by name')
  return rows
}

function findPending(migrations: readonly Migration[], applied: readonly Applied[]): readonly Migration[] {
  const known = new Map(migrations.map((migration) => [migration.name, migration]))
  for (const { name, sha256 } of applied) {
    const migration = known.get(name)
    if (!migration) throw new MigrationError(`${name} was applied to this database but its file is missing`)
    if (migration.sha256 !== sha256) throw new MigrationError(`${name} was altered after it was applied`)
  }
  const last = applied.at(-1)?.name ?? ''
  const pending = migrations.filter((migration) => !applied.some(({ name }) => name === migration.name))
  const late = pending.find((migration) => migration.name < last)
  if (late) throw new MigrationError(`${late.name} sorts before ${last}, which is already applied`)
  return pending
}

async function applyMigration(owner: ClientBase, migration: Migration): Promise<void> {
  await owner.query('begin')
  try {
    await owner.query("set local lock_timeout = '2s'")
    await owner.query(migration.text)
    await owner.query('insert into schema_migration (name, sha256) values ($1, $2)', [migration.name, migration.sha256])
    await owner.query('commit')
  } catch (error) {
    await owner.query('rollback')
    throw new MigrationError(`${migration.name} failed and left nothing behind: ${(error as Error).message}`, {
      cause: error,
    })
  }
}
