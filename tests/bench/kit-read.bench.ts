// kit.read: requests a second of the kit, as a share of a bare route in the same process that opens the club's
// transaction and sends the same bytes. Rounds of both alternate, so that a busy machine slows both alike.
import { createSecretKey, randomBytes } from 'node:crypto'
import { Agent, request } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { paths, pathTo } from '@espalier/contract/paths'
import { accessRules } from '@espalier/domain/access'
import { ok } from '@espalier/domain/quantities'
import { buildApp } from '../../apps/api/src/app'
import { readMigrations } from '../../apps/api/src/db/migrate'
import { closePools, openPools } from '../../apps/api/src/db/pool'
import { withClub } from '../../apps/api/src/db/with-club'
import { signInAs } from '../../apps/api/src/demo/actor'
import { DEMO_CLUB_ID, demoId } from '../../apps/api/src/demo/ids'
import { makeDemoClub } from '../../apps/api/src/demo/make-demo-club'
import type { Deps } from '../../apps/api/src/deps'
import { makeOperatorLink } from '../../apps/api/src/features/clubs/make-operator-link'
import { makeSignInSecret } from '../../apps/api/src/features/clubs/sign-in-address'
import { makeNewId } from '../../apps/api/src/new-id'
import { CHECK_POOL_LIMITS, makeCheckPool } from '../../apps/api/src/workers/check-pool'
import { databaseUrl, startTestCluster } from '../support/database-cluster'

const GOAL = 0.7
const CONNECTIONS = 8
const ROUND_MILLISECONDS = 400
const ROUNDS = 25
const UNLIMITED = { requests: Number.MAX_SAFE_INTEGER, windowSeconds: 60 }
const ORIGIN = 'https://bench.test'

const { cluster, stop } = await startTestCluster()
const clock = { now: Date.now() }
const as = (role: keyof typeof cluster.passwords) => {
  const url = new URL(databaseUrl(cluster.ownerUrl, cluster.template))
  url.username = role
  url.password = cluster.passwords[role] ?? ''
  return url.href
}
const pools = await openPools(
  {
    appUrl: as('espalier_app'),
    identityUrl: as('espalier_identity'),
    appConnections: CONNECTIONS,
    identityConnections: CONNECTIONS,
  },
  () => {},
)
const deps: Deps = {
  pools,
  checks: makeCheckPool({ ...CHECK_POOL_LIMITS, threads: 1 }),
  nameKey: createSecretKey(randomBytes(32)),
  accessRules,
  now: () => clock.now,
  newId: makeNewId(() => clock.now),
  migrations: readMigrations(join(import.meta.dirname, '../../prisma/migrations')).map(({ name }) => name),
  settings: {
    origins: [ORIGIN],
    webOrigin: null,
    trustedProxies: 0,
    webKey: null,
    limits: {
      anonymous: UNLIMITED,
      login: UNLIMITED,
      operations: UNLIMITED,
      checks: UNLIMITED,
      pages: UNLIMITED,
      files: UNLIMITED,
    },
    checkThreads: 1,
    logLevel: 'silent',
  },
}

let bytes = ''
const app = await buildApp(deps, async (building) => {
  building.get('/bare/:clubId', { config: { access: { kind: 'open' }, uncounted: true } }, async (asked, reply) => {
    const { clubId } = asked.params as { clubId: string }
    // The floor: the wall, one statement that names the club, and the same bytes out.
    await withClub(pools, clubId, async (db) =>
      ok(await db.sql.rows({ name: 'bare', text: 'select name from club where club_id = $1', values: [clubId] })),
    )
    reply.type('application/json; charset=utf-8')
    return bytes
  })
})

const agent = new Agent({ keepAlive: true, maxSockets: CONNECTIONS })
let port = 0

function ask(path: string, cookie: string): Promise<{ status: number; text: string }> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port, path, agent, headers: { cookie } }, (answer) => {
      const parts: Buffer[] = []
      answer.on('data', (part: Buffer) => parts.push(part))
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, text: Buffer.concat(parts).toString() }))
    })
    sent.on('error', reject)
    sent.end()
  })
}

/** Requests a second over all connections, each asking again as soon as it is answered. */
async function measure(path: string, cookie: string, milliseconds: number): Promise<number> {
  const end = performance.now() + milliseconds
  let answered = 0
  const work = async () => {
    while (performance.now() < end) {
      const { status } = await ask(path, cookie)
      if (status !== 200) throw new Error(`${path} was answered with ${status}`)
      answered += 1
    }
  }
  await Promise.all(Array.from({ length: CONNECTIONS }, work))
  return (answered * 1000) / milliseconds
}

async function signInCoach(): Promise<string> {
  const secret = makeSignInSecret()
  await makeOperatorLink(deps, { clubId: DEMO_CLUB_ID, memberId: demoId('person', 'linden'), tokenHash: secret.hash })
  const payload = JSON.stringify({ clubId: DEMO_CLUB_ID, token: secret.token })
  const headers = { origin: ORIGIN, 'content-type': 'application/json' }
  const answer = await app.inject({ method: 'POST', url: paths.logins, headers, payload })
  return String(answer.headers['set-cookie']).split(';')[0]!
}

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!

try {
  await makeDemoClub({ app, deps, origin: ORIGIN }, clock)
  clock.now = Date.now()
  await signInAs({ app, deps, origin: ORIGIN }, demoId('person', 'linden'))
  const cookie = await signInCoach()
  await app.listen({ host: '127.0.0.1', port: 0 })
  port = (app.server.address() as AddressInfo).port
  const kitPath = pathTo(paths.kit, { clubId: DEMO_CLUB_ID, teamId: demoId('team', 'larks') })
  const barePath = `/bare/${DEMO_CLUB_ID}`
  bytes = (await ask(kitPath, cookie)).text
  await measure(barePath, cookie, ROUND_MILLISECONDS)
  await measure(kitPath, cookie, ROUND_MILLISECONDS)
  const pairs = []
  for (let round = 0; round < ROUNDS; round += 1) {
    const floor = await measure(barePath, cookie, ROUND_MILLISECONDS)
    pairs.push({ floor, value: await measure(kitPath, cookie, ROUND_MILLISECONDS) })
  }
  const value = median(pairs.map((pair) => pair.value))
  const floor = median(pairs.map((pair) => pair.floor))
  const ratio = median(pairs.map((pair) => pair.value / pair.floor))
  const rounded = (number: number, digits: number) => Number(number.toFixed(digits))
  const figure = { figure: 'kit.read', value: rounded(value, 0), unit: 'requests/s', floor: rounded(floor, 0) }
  process.stdout.write(`${JSON.stringify({ ...figure, ratio: rounded(ratio, 3), goal: GOAL, bytes: bytes.length })}\n`)
} finally {
  agent.destroy()
  await app.close()
  await closePools(pools)
  await stop()
}
