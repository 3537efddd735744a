import { createSecretKey, randomBytes } from 'node:crypto'
import { join } from 'node:path'
import { accessRules } from '@espalier/domain/access'
import { afterAll } from 'vitest'
import { buildApp } from '../../apps/api/src/app'
import { readMigrations } from '../../apps/api/src/db/migrate'
import type { Pools } from '../../apps/api/src/db/pool'
import type { Deps, Settings } from '../../apps/api/src/deps'
import type { Api } from '../../apps/api/src/http/api'
import { makeNewId } from '../../apps/api/src/new-id'
import { CHECK_POOL_LIMITS, makeCheckPool } from '../../apps/api/src/workers/check-pool'
import { testPools } from '../support/database'

export const ORIGIN = 'https://club.test'

/** A Tuesday in September, 18:00 in London: inside the season that the factories make. */
export const SEPTEMBER = Date.parse('2026-09-15T17:00:00.000Z')

/** A clock that stands until a test moves it. */
export type TestClock = { now: number }

export type TestApi = { readonly app: Api; readonly deps: Deps; readonly clock: TestClock }

const MANY = { requests: 1_000_000, windowSeconds: 60 }

export const TEST_SETTINGS: Settings = {
  origins: [ORIGIN],
  webOrigin: null,
  trustedProxies: 0,
  webKey: null,
  limits: { anonymous: MANY, login: MANY, operations: MANY, checks: MANY, pages: MANY, files: MANY },
  checkThreads: 2,
  logLevel: 'silent',
}

const PATIENTLY = { waitMilliseconds: 60_000, runMilliseconds: 60_000 }

export const TEST_NAME_KEY = createSecretKey(randomBytes(32))

export function testDeps(pools: Pools, clock: TestClock, changed: Partial<Deps> = {}): Deps {
  const now = () => clock.now
  return {
    pools,
    // A thread reads TypeScript here, and on a busy machine it takes its time to start.
    checks: makeCheckPool({ ...CHECK_POOL_LIMITS, threads: TEST_SETTINGS.checkThreads, ...PATIENTLY }),
    settings: TEST_SETTINGS,
    nameKey: TEST_NAME_KEY,
    accessRules,
    now,
    newId: makeNewId(now),
    migrations: readMigrations(join(import.meta.dirname, '../../prisma/migrations')).map(({ name }) => name),
    ...changed,
  }
}

/** The API on the worker's database, closed when the test file ends. */
export async function testApi(changed: Partial<Deps> = {}): Promise<TestApi> {
  const clock = { now: SEPTEMBER }
  const deps = testDeps(changed.pools ?? (await testPools()), clock, changed)
  const app = await buildApp(deps)
  afterAll(async () => {
    await app.close()
    await deps.checks.close()
  })
  return { app, deps, clock }
}
