// The database of this machine, or another by DATABASE_URL: started, migrated, and the addresses its users log in with.
import { join } from 'node:path'
import pg from 'pg'
import { startPostgres } from './postgres.mjs'
import { runProgram } from './programs.mjs'
import { readSecrets } from './secrets.mjs'

const NAME = 'espalier'
const DATABASE_MISSING = '3D000'
const DATABASE_EXISTS = '42P04'
const UNIQUE_VIOLATION = '23505'

// Terse, because the details of an error would copy rows into the log, names of people among them.
const SETTINGS = { log_error_verbosity: 'terse', log_checkpoints: 'off', max_connections: '60' }

/** Starts or finds the server. `stop` stops only a server of this data folder. */
export async function openDatabase({ folder, databaseUrl }) {
  const secrets = readSecrets(folder)
  if (databaseUrl) {
    await ensureDatabase(databaseUrl)
    return { ownerUrl: databaseUrl, reused: true, secrets, stop: async () => {} }
  }
  const { urlOf, reused, stop } = await startPostgres({
    folder: join(folder, 'postgres'),
    password: secrets.postgres,
    settings: SETTINGS,
  })
  try {
    await ensureDatabase(urlOf(NAME))
  } catch (error) {
    if (!reused) await stop()
    throw error
  }
  return { ownerUrl: urlOf(NAME), reused, secrets, stop }
}

/** Makes the database where the server has none of this name. */
async function ensureDatabase(url) {
  try {
    await connectOnce(url, async () => {})
    return
  } catch (error) {
    if (error.code !== DATABASE_MISSING) throw error
  }
  const parts = new URL(url)
  const name = decodeURIComponent(parts.pathname.slice(1))
  parts.pathname = '/postgres'
  await connectOnce(parts.href, async (server) => {
    await server
      .query(`create database ${server.escapeIdentifier(name)} template template0 encoding 'UTF8'`)
      // Another start was faster.
      .catch((error) =>
        error.code === DATABASE_EXISTS || error.code === UNIQUE_VIOLATION ? null : Promise.reject(error),
      )
  })
}

async function connectOnce(connectionString, work) {
  const client = new pg.Client({ connectionString, connectionTimeoutMillis: 10_000 })
  try {
    await client.connect()
  } catch (error) {
    if (error.code === DATABASE_MISSING) throw error
    throw new Error(`The database does not let us in: ${error.message || error.code}`)
  }
  try {
    await work(client)
  } finally {
    await client.end()
  }
}

/** @param {AbortSignal} [signal] */
export async function migrateDatabase(root, { ownerUrl, secrets }, signal) {
  await runProgram({
    name: 'Preparing the database',
    entry: join(root, 'apps/api/dist/migrate.js'),
    cwd: root,
    signal,
    env: {
      DATABASE_URL: ownerUrl,
      ESPALIER_APP_PASSWORD: secrets.app,
      ESPALIER_IDENTITY_PASSWORD: secrets.identity,
      ESPALIER_SIGNER_PASSWORD: secrets.signer,
      ESPALIER_KEK: secrets.keyEncryptionKey,
    },
  })
}

/** What the API's programs are told, and nothing of the owner. */
export function databaseEnvironment({ ownerUrl, secrets }, origin) {
  const as = (role, password) => {
    const url = new URL(ownerUrl)
    url.username = role
    url.password = password
    return url.href
  }
  return {
    ESPALIER_APP_DATABASE_URL: as('espalier_app', secrets.app),
    ESPALIER_IDENTITY_DATABASE_URL: as('espalier_identity', secrets.identity),
    ESPALIER_KEK: secrets.keyEncryptionKey,
    ESPALIER_ORIGIN: origin,
  }
}
