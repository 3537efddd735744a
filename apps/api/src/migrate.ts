import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import pg from 'pg'
import { readMigrationConfig } from './config'
import { migrate, readMigrations } from './db/migrate'
import { ensureDatabaseAccess, ensureRoles } from './db/roles'

// Runs to its end before anything serves: the database, its roles, then the migrations.

const DATABASE_MISSING = '3D000'

const { ownerUrl, passwords } = readMigrationConfig(process.env)
const owner = await connectOrCreate(ownerUrl)
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

async function connectOrCreate(url: string): Promise<pg.Client> {
  try {
    return await connect(url)
  } catch (error) {
    if ((error as { code?: string }).code !== DATABASE_MISSING) throw error
  }
  const parts = new URL(url)
  const name = decodeURIComponent(parts.pathname.slice(1))
  parts.pathname = '/postgres'
  const server = await connect(parts.href)
  await server.query(`create database ${server.escapeIdentifier(name)} template template0 encoding 'UTF8'`)
  await server.end()
  return connect(url)
}

async function connect(connectionString: string): Promise<pg.Client> {
  const client = new pg.Client({ connectionString, connectionTimeoutMillis: 10_000 })
  await client.connect()
  return client
}
