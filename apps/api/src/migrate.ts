import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import pg from 'pg'
import { readMigrationConfig } from './config'
import { readMigrations } from './db/migrate'
import { NameKeyError } from './db/name-key'
import { prepareDatabase } from './db/prepare-database'

// Runs to its end before anything serves.

const { ownerUrl, passwords, keyEncryptionKey } = readMigrationConfig(process.env)
const owner = new pg.Client({ connectionString: ownerUrl, connectionTimeoutMillis: 10_000 })
await owner.connect()
try {
  // Both this source and the bundle made of it lie one folder below the app.
  const folder = join(dirname(fileURLToPath(import.meta.url)), '../../../prisma/migrations')
  const applied = await prepareDatabase(owner, { passwords, keyEncryptionKey, migrations: readMigrations(folder) })
  console.log(applied.length === 0 ? 'The database is up to date.' : `Applied ${applied.join(', ')}.`)
} catch (error) {
  if (!(error instanceof NameKeyError)) throw error
  // Said to a person, who needs no stack.
  console.error(error.message)
  process.exitCode = 1
} finally {
  await owner.end()
}
