import { createSecretKey } from 'node:crypto'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { accessRules } from '@espalier/domain/access'
import type { DatabaseConfig } from './config'
import { readMigrations } from './db/migrate'
import { requireNameKey } from './db/name-key'
import { closePools, openPools } from './db/pool'
import { DEFAULT_LIMITS, type Deps, type Settings } from './deps'
import { makeNewId } from './new-id'
import { CHECK_POOL_LIMITS, makeCheckPool } from './workers/check-pool'

/**
 * The parts of a running program; the pools are open, and refuse a role that could pass a club's wall. Refuses a key
 * that does not open the children's names of this database.
 */
export async function startDeps(
  config: DatabaseConfig,
  changed: Partial<Settings> & { readonly now?: () => number } = {},
): Promise<Deps> {
  const { now = Date.now, ...settings } = changed
  const pools = await openPools(config, (error) => {
    // A connection that dies unused is replaced by the pool; its words may name a host, so only its kind is said.
    process.stderr.write(`${JSON.stringify({ level: 40, msg: 'idle connection lost', kind: error.name })}\n`)
  })
  try {
    await requireNameKey(pools.app, config.keyEncryptionKey)
  } catch (error) {
    await closePools(pools)
    throw error
  }
  // Both this source and the bundle made of it lie one folder below the app.
  const migrations = readMigrations(join(dirname(fileURLToPath(import.meta.url)), '../../../prisma/migrations'))
  const all: Settings = {
    origins: [config.origin],
    webOrigin: null,
    trustedProxies: 0,
    webKey: null,
    limits: DEFAULT_LIMITS,
    checkThreads: 1,
    logLevel: 'info',
    ...settings,
  }
  return {
    pools,
    checks: makeCheckPool({ ...CHECK_POOL_LIMITS, threads: all.checkThreads }),
    nameKey: createSecretKey(config.keyEncryptionKey),
    accessRules,
    now,
    newId: makeNewId(now),
    migrations: migrations.map(({ name }) => name),
    settings: all,
  }
}
