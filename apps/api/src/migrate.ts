import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import pg from 'pg'
import { readMigrationConfig } from './config'
import { migrate, readMigrations } from './db/migrate'
import { ensureDatabaseAccess, ensureRoles } from './db/roles'

// Runs to its end before anything serves: the roles, then the migrations.

const { ownerUrl, passwords } = readMigrationConfig(process.env)
const owner = new pg.Client({ connectionString: ownerUrl, connectionTimeoutMillis: 10_000 })
await owner.connect()
try {
  await ensureRoles(owner, passwords)
  await ensureDatabaseAccess(owner)
  // Both this source and the bundle made of it lie one folder below the app.
  const folder = join(dirname(fileURLToPath(import.meta.url)), '../../../prisma/migrations')
  const applied = await migrate(owner, readMigrations(folder))
  console.log(applied.length === 0 ? 'The database is up to date.' : `Applied ${applied.join(', ')}.`)
} finally {
  await owner.end()
}
