import { createSecretKey, randomBytes } from 'node:crypto'
import { accessRules } from '@espalier/domain/access'
import { buildApp } from './app'
import type { Pools } from './db/pool'
import { DEFAULT_LIMITS, type Deps } from './deps'
import { describeRoutes } from './http/openapi'
import type { CheckPool } from './workers/check-pool'

/** The generated contract, as text. Nothing is asked of a database: the server is built and never serves. */
export async function describeApi(): Promise<string> {
  const app = await buildApp(DESCRIBING, describeRoutes)
  try {
    return `${JSON.stringify(app.swagger(), null, 1)}\n`
  } finally {
    await app.close()
  }
}

const DESCRIBING: Deps = {
  pools: {} as Pools,
  checks: {} as CheckPool,
  nameKey: createSecretKey(randomBytes(32)),
  accessRules,
  now: () => 0,
  newId: () => '00000000-0000-7000-8000-000000000000',
  migrations: [],
  settings: {
    origins: [],
    webOrigin: null,
    trustedProxies: 0,
    webKey: null,
    limits: DEFAULT_LIMITS,
    checkThreads: 1,
    logLevel: 'silent',
  },
}
