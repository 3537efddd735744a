import { execFileSync } from 'node:child_process'
import { randomBytes } from 'node:crypto'
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { paths } from '@espalier/contract/paths'
import { afterAll, expect, test, vi } from 'vitest'
import { keepNameKey } from '../../apps/api/src/db/name-key'
import { closePools, openPools } from '../../apps/api/src/db/pool'
import { wallOnTheRight } from '../../prisma/demo/patterns'
import { ORIGIN, testApi } from '../factories/api'
import { bodyOf, NOTHING_MORE, PITCH, reportText } from '../factories/checks'
import { makeClub } from '../factories/club'
import { freshDatabase } from '../support/database'
import { withOwner } from '../support/database-cluster'
import { type ServerProcess, startServerProcess } from './support/server-process'

// The server as it is built and shipped: its threads are files of their own, which only the build puts beside it.

vi.setConfig({ testTimeout: 120_000 })

const folder = join(import.meta.dirname, '../../apps/api')
const nameKey = randomBytes(32)
const database = await freshDatabase()
await withOwner(database.ownerUrl, (owner) => keepNameKey(owner, nameKey))
const { appUrl, identityUrl } = database
const pools = await openPools({ appUrl, identityUrl, appConnections: 2, identityConnections: 1 }, () => {})
const api = await testApi({ pools })
// The process has a clock of its own, and a login of September would have ended for it.
api.clock.now = Date.now()
let server: ServerProcess | null = null
afterAll(async () => {
  server?.kill()
  rmSync(join(folder, 'out'), { recursive: true, force: true })
  await closePools(pools)
  await database.drop()
})

test('the built server finds its threads, checks a pattern in one, and stops while that is still there', async () => {
  const { administrator } = await makeClub(api)
  execFileSync(process.execPath, [join(folder, 'build.mjs'), 'out'])
  server = await startServerProcess(database, nameKey, [join(folder, 'out', 'main.js')])
  const options = { ...NOTHING_MORE, looks: true }
  const answer = await fetch(`${server.origin}${paths.patternChecks}`, {
    method: 'POST',
    headers: { cookie: administrator.cookie!, origin: ORIGIN, 'content-type': 'application/json' },
    body: JSON.stringify(bodyOf(wallOnTheRight, options)),
  })
  expect(answer.status).toBe(200)
  expect(await answer.text()).toBe(reportText(wallOnTheRight, PITCH, options))
  server.askToStop()
  expect(await server.ended).toBe(0)
})
