import { request } from 'node:http'
import type { AddressInfo } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { paths } from '@espalier/contract/paths'
import { CHECK_RUNS_MAX, patternCheck } from '@espalier/contract/pattern-checks'
import type { CheckReportOptions } from '@espalier/domain/check'
import { nominalSpace } from '@espalier/domain/pitch'
import { ok } from '@espalier/domain/quantities'
import { beforeAll, describe, expect, test, vi } from 'vitest'
import * as z from 'zod/mini'
import { DEMO_PATTERNS, wallOnTheRight } from '../../../../../prisma/demo/patterns'
import { TEST_SETTINGS, type TestApi, testApi } from '../../../../../tests/factories/api'
import { bodyOf, NOTHING_MORE, PITCH, reportText, taskOfRuns, toAndFro } from '../../../../../tests/factories/checks'
import { makeClub, type TestClub } from '../../../../../tests/factories/club'
import { type Answer, makePerson, type Person } from '../../../../../tests/factories/person'
import { asOwner, testDatabase } from '../../../../../tests/support/database'
import { CHECK_POOL_LIMITS, type CheckPool, makeCheckPool } from '../../workers/check-pool'

vi.setConfig({ testTimeout: 120_000 })

const PATIENT = { ...CHECK_POOL_LIMITS, threads: 1, waitMilliseconds: 60_000, runMilliseconds: 60_000 }
const api = await testApi()
let club: TestClub
beforeAll(async () => {
  club = await makeClub(api)
})

/** As often as a page with some open tabs would ask. */
const PAUSE_MILLISECONDS = 5

const ask = (body: unknown, person: Person = club.administrator) => person.send('POST', paths.patternChecks, body)

async function countEntries(): Promise<number> {
  const text = 'select count(*)::int as count from ledger_entry where club_id = $1'
  const [row] = await asOwner<{ count: number }>(await testDatabase(), text, [club.clubId])
  return row!.count
}

/** The same people at a server that checks in another way. */
async function askerAt(checks: CheckPool, limits = TEST_SETTINGS.limits): Promise<{ at: TestApi; person: Person }> {
  const at = await testApi({ checks, settings: { ...TEST_SETTINGS, limits } })
  const person = makePerson(at.app)
  person.cookie = club.administrator.cookie
  return { at, person }
}

describe('a check', () => {
  test.each(DEMO_PATTERNS.map((document) => [document.title, document] as const))(
    'of “%s” is byte for byte what the domain says, in the shape of the contract',
    async (_, document) => {
      const options: CheckReportOptions = {
        looks: true,
        pressure: { opponentsMax: 2, released: 'first-touch' },
        errorRuns: { runs: 2000, seed: 11 },
      }
      const answer = await ask(bodyOf(document, options))
      expect(answer.status).toBe(200)
      expect(answer.text).toBe(reportText(document, nominalSpace(document.formatId), options))
      expect(z.safeParse(patternCheck, answer.json).error).toBeUndefined()
    },
  )

  test('is of the space, the players and the ground that are named', async () => {
    const space = { ...PITCH, lengthMm: 30_000, widthMm: 25_000 }
    const named = { ...bodyOf(wallOnTheRight), space, profileId: 'U12', surface: 'heavy' }
    const plain = await ask(bodyOf(wallOnTheRight))
    const texts = [
      (await ask({ ...named, space: null })).text,
      (await ask({ ...named, profileId: undefined })).text,
      (await ask({ ...named, surface: undefined })).text,
      (await ask(named)).text,
    ]
    expect(new Set([plain.text, ...texts]).size).toBe(5)
  })

  test('may be asked by whoever is signed in, without a key, and leaves nothing in any record book', async () => {
    const before = await countEntries()
    const bare = await api.app.inject({
      method: 'POST',
      url: paths.patternChecks,
      headers: {
        cookie: club.administrator.cookie!,
        origin: TEST_SETTINGS.origins[0]!,
        'content-type': 'application/json',
      },
      payload: JSON.stringify(bodyOf(wallOnTheRight)),
    })
    expect(bare.statusCode).toBe(200)
    expect(await countEntries()).toBe(before)
    expect((await ask(bodyOf(wallOnTheRight), makePerson(api.app))).json.code).toBe('not-signed-in')
  })

  test('must come from a page of ours and be JSON', async () => {
    const send = (headers: Record<string, string>) =>
      club.administrator.send('POST', paths.patternChecks, bodyOf(wallOnTheRight), { headers })
    expect((await send({ 'sec-fetch-site': 'cross-site' })).json.code).toBe('cross-site')
    expect((await send({ 'content-type': 'text/plain' })).json.code).toBe('json-only')
  })

  test('is counted by a limit of its own: one more than it allows is refused, and other requests are not', async () => {
    const limits = { ...TEST_SETTINGS.limits, checks: { requests: 2, windowSeconds: 60 } }
    const { person } = await askerAt({ run: async () => ok('{}'), close: async () => {} }, limits)
    const statuses = []
    for (let time = 0; time < 3; time += 1) statuses.push((await ask(bodyOf(wallOnTheRight), person)).status)
    expect(statuses).toEqual([200, 200, 429])
    expect((await person.get(paths.me)).status).toBe(200)
  })
})

describe('bad input is refused and pointed at', () => {
  const { steps } = wallOnTheRight
  const spot = (upMm: unknown) => ({ landmark: 'goal-centre', upMm, rightMm: 0 })
  const at = (upMm: unknown) => [{ position: 'GK', spot: spot(upMm) }, ...wallOnTheRight.positions.slice(1)]
  const exit = { sign: 'all-shut', about: null, steps: [{ ...steps[1], stepId: 'e1' }], rejoins: 'exit' }
  const back = { ...steps[1], stepId: 'a1', action: { ...steps[1]!.action, to: 'GK' } }
  /** Before the second step: an answer that goes back to the goalkeeper and on from there. */
  const rejoining = (rejoins: string) => look([{ sign: 'lane-shut', about: null, steps: [back], rejoins }, exit])
  const look = (answers: readonly object[]) => [{ lookId: 'l1', stepId: 's2', by: 'RCB', answers }]
  const many = Array.from({ length: 200 }, (_, index) => ({ ...steps[index % 2]!, stepId: `s${index}` }))
  const runs = (count: number) => ({ errorRuns: { runs: count, seed: 1 } })

  test.each<readonly [string, string, string, object, object?]>([
    ['200 steps', 'bad-request', '/document/steps', { steps: many }],
    ['no step at all', 'bad-request', '/document/steps', { steps: [] }],
    ['a place that is no number', 'bad-request', '/document/positions/0/spot/upMm', { positions: at(null) }],
    ['a place without end', 'bad-request', '/document/positions/0/spot/upMm', { positions: at(1e308) }],
    [
      'a look without an exit',
      'bad-request',
      '/document/looks/0/answers',
      { looks: look([{ ...exit, sign: 'lane-shut' }]) },
    ],
    [
      'an answer that rejoins a step that does not exist',
      'reference-unknown',
      '/document/looks/0/answers/0/rejoins',
      { looks: rejoining('s77') },
    ],
    [
      'an answer that goes round in a circle',
      'reference-unknown',
      '/document/looks/0/answers/0/rejoins',
      { looks: rejoining('s1') },
    ],
    [
      'a player who passes to themselves',
      'nobody-receives',
      '/document/steps/0/action/to',
      { steps: [{ ...steps[0], action: { ...steps[0]!.action, to: 'GK' } }] },
    ],
    ['a million runs', 'too-many-runs', '/options/errorRuns/runs', {}, runs(1_000_000)],
    ['one run more than may be asked', 'too-many-runs', '/options/errorRuns/runs', {}, runs(CHECK_RUNS_MAX + 1)],
    ['half a run', 'bad-request', '/options/errorRuns/runs', {}, runs(0.5)],
    ['a seed below none', 'bad-request', '/options/errorRuns/seed', {}, { errorRuns: { runs: 1, seed: -1 } }],
    [
      'a dozen opponents',
      'bad-request',
      '/options/pressure/opponentsMax',
      {},
      { pressure: { opponentsMax: 12, released: 'ball-in-play' } },
    ],
  ])('%s', async (_, code, pointer, changed, options) => {
    const document = { ...wallOnTheRight, ...(changed as object) }
    const { status, json } = await ask(bodyOf(document, options as object))
    expect([json.code, status]).toEqual([code, status === 422 ? 422 : 400])
    expect(json.errors.map((error: { pointer: string }) => error.pointer)).toContain(pointer)
  })

  test('what only looks odd is checked: coincident players, a ball that goes nowhere, a receiver off the space', async () => {
    const together = wallOnTheRight.positions.map(({ position }) => ({ position, spot: spot(0) }))
    const away = wallOnTheRight.positions.map((each) =>
      each.position === 'RCB' ? { ...each, spot: spot(-20_000) } : each,
    )
    const everything = { looks: true, pressure: true, errorRuns: { runs: 100, seed: 3 } }
    for (const positions of [together, away]) {
      const answer = await ask(bodyOf({ ...wallOnTheRight, positions }, everything))
      expect(answer.status).toBe(200)
      expect(z.safeParse(patternCheck, answer.json).error).toBeUndefined()
    }
  })
})

describe('a check that takes long', () => {
  const heavy = bodyOf(toAndFro, { errorRuns: { runs: CHECK_RUNS_MAX, seed: 1 } })

  /** How long the server needs for a light request, again and again while somebody's check is under way. */
  async function waitsDuring(at: TestApi, person: Person) {
    let answer: Answer | null = null
    const from = performance.now()
    const check = ask(heavy, person).then((found) => {
      answer = found
    })
    const waits: number[] = []
    while (answer === null) {
      const asked = performance.now()
      await pause(PAUSE_MILLISECONDS)
      expect((await at.app.inject('/livez')).statusCode).toBe(200)
      waits.push(performance.now() - asked)
    }
    await check
    const sorted = waits.toSorted((a, b) => a - b)
    const { status } = answer as Answer
    return { status, took: performance.now() - from, median: sorted[sorted.length >> 1]!, longest: sorted.at(-1)! }
  }

  test('holds up no other request; control: in the thread that answers, it would hold up all', async () => {
    const away = await askerAt(makeCheckPool(PATIENT))
    const free = await waitsDuring(away.at, away.person)
    const here = await askerAt({
      run: async ({ document, space, options }) => ok(reportText(document, space, options)),
      close: async () => {},
    })
    const held = await waitsDuring(here.at, here.person)
    expect([free.status, held.status]).toEqual([200, 200])
    expect(free.median).toBeLessThan(100)
    expect(free.longest).toBeLessThan(free.took / 2)
    expect(held.longest).toBeGreaterThan(held.took / 2)
  })

  test('is refused where it takes longer than one may, and says so', async () => {
    const { person } = await askerAt(makeCheckPool({ ...PATIENT, runMilliseconds: 50 }))
    const answer = await ask(heavy, person)
    expect([answer.status, answer.json.code]).toEqual([422, 'check-too-much'])
    expect(answer.json.detail).toBe('it takes too long')
  })

  test('makes others try again later where no thread is free and nobody more may wait', async () => {
    const checks = makeCheckPool({ ...PATIENT, waitingMax: 0 })
    const { person } = await askerAt(checks)
    const first = new AbortController()
    const running = checks.run(taskOfRuns(CHECK_RUNS_MAX), first.signal)
    const answer = await ask(bodyOf(wallOnTheRight), person)
    expect([answer.status, answer.json.code, Number(answer.headers['retry-after']) > 0]).toEqual([503, 'busy', true])
    first.abort()
    await running
    expect((await ask(bodyOf(wallOnTheRight), person)).status).toBe(200)
  })

  test('ends when whoever asked for it hangs up', async () => {
    const pool = makeCheckPool(PATIENT)
    const ends: Promise<unknown>[] = []
    const checks: CheckPool = {
      ...pool,
      run: (task, hungUp) => {
        const end = pool.run(task, hungUp)
        ends.push(end)
        return end
      },
    }
    const { at, person } = await askerAt(checks)
    await at.app.listen({ host: '127.0.0.1', port: 0 })
    const { port } = at.app.server.address() as AddressInfo
    const headers = { cookie: person.cookie!, origin: TEST_SETTINGS.origins[0]!, 'content-type': 'application/json' }
    const asking = request({ host: '127.0.0.1', port, path: paths.patternChecks, method: 'POST', headers })
    asking.on('error', () => {})
    asking.end(JSON.stringify(heavy))
    await expect.poll(() => ends.length, { timeout: 20_000 }).toBe(1)
    asking.destroy()
    expect(await ends[0]).toEqual({ ok: false, refusal: { code: 'hung-up' } })
    expect((await ask(bodyOf(wallOnTheRight, NOTHING_MORE), person)).status).toBe(200)
  })
})
