import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { paths, pathTo } from '@espalier/contract/paths'
import { accessRules, permissions } from '@espalier/domain/access'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { SEPTEMBER, testDeps } from '../factories/api'
import { expectStatus } from '../factories/club'
import { type FurnishedClub, makeFurnishedClub } from '../factories/furnished-club'
import { freshId, testDatabase, testPools } from '../support/database'
import { buildLiveApi, type LiveApi } from './live-routes'
import { makeWorld, type World } from './matrix'
import { describeKeys, describeRoute, READERS, readExpectation } from './seen-keys'

const deps = testDeps(await testPools(), { now: SEPTEMBER + 7_200_000 })
const live = await buildLiveApi(deps)
const reads = live.routes.filter(({ method, access }) => method === 'GET' && access?.kind === 'member')
const expected = readExpectation(readFileSync(join(import.meta.dirname, 'what-roles-see.txt'), 'utf8'))
let world: World

beforeAll(async () => {
  const api = { app: live.app, deps, clock: { now: SEPTEMBER } }
  const club = await makeFurnishedClub(api)
  await countEquipment(club)
  world = await makeWorld(live, await testDatabase(), club, await makeFurnishedClub(api))
})
afterAll(() => live.app.close())

/** The store and each bag, so that who sees which owner shows. */
async function countEquipment({ clubId, administrator, teams }: FurnishedClub): Promise<void> {
  const counts = { cone: 9, pole: 2, 'small-goal': 1, ball: 5, bib: 8 }
  for (const teamId of [null, ...teams.map((team) => team.teamId)]) {
    const body = { id: freshId(), teamId, counts }
    const path = pathTo(paths.equipment, { clubId })
    expectStatus(await administrator.send('POST', path, body, { fromVersion: 0 }), 200)
  }
}

describe('what a role is told inside an answer about their own', () => {
  test('stands in what-roles-see.txt for every route that reads, and for no other', () => {
    expect([...expected.keys()]).toEqual(reads.map(({ method, url }) => `${method} ${url}`))
  })

  // The text is written by hand: a key more or less must be read and judged before it is expected.
  test.each(reads.map((route) => [route.url, route] as const))('%s', async (url, route) => {
    expect(await describeRoute(world, route)).toBe(expected.get(`GET ${url}`))
  })
})

describe('control', () => {
  /** The routes whose answers differ from the expectation when everybody asks this server. */
  async function listDifferent(careless: LiveApi): Promise<readonly string[]> {
    const ask = (cookie: string | null) => async (url: string) => {
      const answer = await careless.app.inject({ url, headers: cookie === null ? {} : { cookie } })
      const { statusCode: status, headers, payload: text } = answer
      return { status, headers, text, json: JSON.parse(text) }
    }
    const people = { ...world.people }
    for (const reader of READERS) people[reader] = { ...people[reader], get: ask(people[reader].cookie) }
    const different: string[] = []
    for (const route of reads) {
      const found = await describeRoute({ ...world, people }, route)
      if (found !== expected.get(`GET ${route.url}`)) different.push(route.url)
    }
    await careless.app.close()
    return different
  }

  test('an auditor who may read names is found in the squad', async () => {
    const names = { ...permissions['squad.read-names'], auditor: 'club' } as const
    const rules = { ...accessRules, permissions: { ...permissions, 'squad.read-names': names } }
    expect(await listDifferent(await buildLiveApi({ ...deps, accessRules: rules }))).toContain(paths.squad)
  })

  test('one key more in the answers of one route is found there and nowhere else', async () => {
    const careless = await buildLiveApi(deps, async (app) => {
      app.addHook('onSend', async (request, _reply, payload) =>
        request.routeOptions.url === paths.people ? String(payload).replace('{', '{"bornOn":"2016-01-01",') : payload,
      )
    })
    expect(await listDifferent(careless)).toEqual([paths.people])
  })

  test('a row, another row, a null that is filled and a key in one row of many each change what is described', () => {
    const [no, one, two] = [[], [{ id: 1 }], [{ id: 1 }, { id: 2 }]]
    const before = describeKeys({ count: 2, rows: no, name: null })
    const others = [
      { count: 2, rows: one, name: null },
      { count: 2, rows: two, name: null },
      { count: 2, rows: no, name: 'Ash' },
      { count: 2, rows: no, name: null, shirt: null },
    ].map((answer) => describeKeys(answer).join())
    expect(new Set([before.join(), ...others]).size).toBe(5)
    expect(describeKeys([{ a: 1 }, { a: null, b: null }])).toEqual(['answer[]: a, b (null)'])
    expect(describeKeys({ rows: one })).toEqual(['answer: rows', 'answer.rows[] (one row): id'])
  })
})
