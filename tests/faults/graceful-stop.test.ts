import { randomBytes } from 'node:crypto'
import { Agent, request } from 'node:http'
import { connect, type Socket } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { paths, pathTo } from '@espalier/contract/paths'
import { afterAll, afterEach, beforeEach, expect, test, vi } from 'vitest'
import { keepNameKey } from '../../apps/api/src/db/name-key'
import { closePools, openPools } from '../../apps/api/src/db/pool'
import { API_HEADERS } from '../../apps/api/src/http/security-headers'
import { ORIGIN, testApi } from '../factories/api'
import { makeClub, type TestClub } from '../factories/club'
import { asOwner, freshDatabase, freshId } from '../support/database'
import { withOwner } from '../support/database-cluster'
import { type ServerProcess, startServerProcess } from './support/server-process'

// A season is added again and again by a real server that is then asked to stop.

vi.setConfig({ testTimeout: 60_000 })

const nameKey = randomBytes(32)
const database = await freshDatabase()
await withOwner(database.ownerUrl, async (owner) => {
  await keepNameKey(owner, nameKey)
  // Here a lock is held until everybody waits for it; on a busy machine that takes longer than the API would wait.
  const name = new URL(database.ownerUrl).pathname.slice(1)
  await owner.query(`alter role espalier_app in database ${name} set lock_timeout = '9s'`)
})
const { appUrl, identityUrl } = database
const pools = await openPools({ appUrl, identityUrl, appConnections: 2, identityConnections: 1 }, () => {})
const api = await testApi({ pools })
// The process has a clock of its own, and a login of September would have ended for it.
api.clock.now = Date.now()
afterAll(async () => {
  await closePools(pools)
  await database.drop()
})

let club: TestClub
let server: ServerProcess
let agent: Agent
beforeEach(async () => {
  club = await makeClub(api)
  server = await startServerProcess(database, nameKey)
  agent = new Agent({ keepAlive: true, maxSockets: 100 })
})
afterEach(() => {
  agent.destroy()
  server.kill()
})

type Write = { readonly key: string; readonly body: { readonly id: string } & Readonly<Record<string, string>> }
type Told = { readonly write: Write; readonly status: number | null; readonly headers: object; readonly text: string }

function newWrite(): Write {
  const id = freshId()
  return { key: freshId(), body: { id, name: `Season ${id}`, firstDay: '2026-09-01', lastDay: '2026-12-20' } }
}

/** What the server answers; a status of null where the connection was refused or lost. */
function send(write: Write): Promise<Told> {
  return new Promise((resolve) => {
    const lost = () => resolve({ write, status: null, headers: {}, text: '' })
    const headers = {
      origin: ORIGIN,
      cookie: club.administrator.cookie!,
      'content-type': 'application/json',
      'idempotency-key': write.key,
    }
    const path = pathTo(paths.seasons, { clubId: club.clubId })
    const sending = request(
      { host: '127.0.0.1', port: server.port, path, method: 'POST', agent, headers },
      (answer) => {
        let text = ''
        answer.on('data', (chunk) => {
          text += String(chunk)
        })
        answer.on('end', () => resolve({ write, status: answer.statusCode!, headers: answer.headers, text }))
        answer.on('error', lost)
      },
    )
    sending.on('error', lost)
    sending.end(JSON.stringify(write.body))
  })
}

async function listSeasonIds(): Promise<ReadonlySet<string>> {
  const text = 'select season_id from season where club_id = $1'
  const rows = await asOwner<{ season_id: string }>(database, text, [club.clubId])
  return new Set(rows.map(({ season_id }) => season_id))
}

/** By then a stop is over in which nothing hangs: at ten seconds the server would give up and end with 1. */
const STOP_MILLISECONDS = 8_000

async function stopsWithin(milliseconds: number): Promise<number | NodeJS.Signals | 'still running' | null> {
  return Promise.race([server.ended, pause(milliseconds, 'still running' as const, { ref: false })])
}

/** Every answer that came is a real one of the API, whichever moment it came at. */
function expectRealAnswers(told: readonly Told[]): void {
  for (const { status, headers, text } of told.filter((one) => one.status !== null)) {
    expect([status, text]).toEqual([201, expect.stringContaining('"entry"')])
    expect(headers).toMatchObject(API_HEADERS)
  }
}

test('requests in flight at the stop get their real answers, and new connections are refused meanwhile', async () => {
  await send(newWrite())
  const writes = Array.from({ length: 8 }, newWrite)
  const told = await withOwner(database.ownerUrl, async (holder) => {
    await holder.query('begin')
    await holder.query('select from ledger_head where club_id = $1 for update', [club.clubId])
    const sending = writes.map(send)
    const waiting = `select count(*)::int as count from pg_stat_activity
                     where wait_event_type = 'Lock' and datname = current_database()`
    const countWaiting = async () => (await asOwner<{ count: number }>(database, waiting))[0]!.count
    await expect.poll(countWaiting, PATIENTLY).toBe(writes.length)
    server.askToStop()
    await expect.poll(() => connects(server.port), PATIENTLY).toBe(false)
    await holder.query('rollback')
    return Promise.all(sending)
  })
  expect(told.map(({ status }) => status)).toEqual(writes.map(() => 201))
  expectRealAnswers(told)
  expect(await stopsWithin(STOP_MILLISECONDS)).toBe(0)
  const seasons = await listSeasonIds()
  expect(writes.filter(({ body }) => !seasons.has(body.id))).toEqual([])
})

const PATIENTLY = { timeout: 5_000 }

async function connects(port: number): Promise<boolean> {
  const socket = connect(port, '127.0.0.1')
  return new Promise<boolean>((resolve) => {
    socket.on('connect', () => resolve(true))
    socket.on('error', () => resolve(false))
  }).finally(() => socket.destroy())
}

const WRITERS = 6
const WRITES_BEFORE_STOP = 30

test('of many writers at the stop nobody loses an answered write, and an unanswered one is found by its key', async () => {
  const told: Told[] = []
  const write = async () => {
    for (;;) {
      const one = await send(newWrite())
      told.push(one)
      if (told.length === WRITES_BEFORE_STOP) server.askToStop()
      if (one.status === null) return
    }
  }
  await Promise.all(Array.from({ length: WRITERS }, write))
  expect(await stopsWithin(STOP_MILLISECONDS)).toBe(0)
  expectRealAnswers(told)

  const seasons = await listSeasonIds()
  const answered = told.filter(({ status }) => status === 201)
  expect(answered.length).toBeGreaterThanOrEqual(WRITES_BEFORE_STOP)
  expect(answered.filter(({ write: { body } }) => !seasons.has(body.id))).toEqual([])
  for (const { write: lost } of told.filter(({ status }) => status === null)) {
    const wasApplied = seasons.has(lost.body.id)
    const path = pathTo(paths.seasons, { clubId: club.clubId })
    const again = await club.administrator.send('POST', path, lost.body, { key: lost.key })
    expect([again.status, again.headers['idempotency-replayed'] === 'true']).toEqual([201, wasApplied])
  }
})

const HALF_A_BODY = [
  'POST /v1/logins HTTP/1.1',
  'host: club.test',
  `origin: ${ORIGIN}`,
  'content-type: application/json',
  'content-length: 50',
  '',
  '{',
].join('\r\n')

test('visitors who have connected and sent nothing, or half a request, do not hold up the stop', async () => {
  const visitors = ['', 'GET /livez HTTP/1.1\r\nhost: club.te', HALF_A_BODY]
  const sockets = await Promise.all(visitors.map(connectAndSay))
  // An answer to somebody who came later: by then the server has read what they sent.
  expectRealAnswers([await send(newWrite())])
  server.askToStop()
  expect(await stopsWithin(STOP_MILLISECONDS)).toBe(0)
  for (const socket of sockets) socket.destroy()
})

function connectAndSay(text: string): Promise<Socket> {
  const socket = connect(server.port, '127.0.0.1')
  socket.on('error', () => {})
  return new Promise((resolve) => socket.on('connect', () => socket.write(text, () => resolve(socket))))
}
