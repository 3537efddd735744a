import { paths, pathTo } from '@espalier/contract/paths'
import pg from 'pg'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { closePools, openPools } from '../../apps/api/src/db/pool'
import { testApi } from '../factories/api'
import { makeClub } from '../factories/club'
import { type Answer, makePerson, type Person } from '../factories/person'
import { freshId, testDatabase } from '../support/database'
import { type CuttingProxy, startCuttingProxy } from './support/cutting-proxy'

const database = await testDatabase()
const direct = await testApi()
const club = await makeClub(direct)
const seasons = pathTo(paths.seasons, { clubId: club.clubId })

/** The administrator's own browser, at another API. */
function signedInAt(api: Awaited<ReturnType<typeof testApi>>): Person {
  const person = makePerson(api.app)
  person.cookie = club.administrator.cookie
  return person
}

const MANY = 12

/** Many at once, so that their look-ups are gathered: readings, writes and the question who one is. */
function askAtOnce(person: Person): Promise<readonly Answer[]> {
  const season = () => ({ id: freshId(), name: freshId(), firstDay: '2026-09-01', lastDay: '2026-12-20' })
  const ask = [
    () => person.get(paths.me),
    () => person.get(seasons),
    () => person.send('POST', seasons, season()),
  ] as const
  return Promise.all(Array.from({ length: MANY }, (_, at) => ask[at % ask.length]!()))
}

const sayOf = ({ status, json, headers }: Answer) => `${status} ${json?.code ?? ''} ${headers['retry-after'] ?? ''}`
const NOT_READY = '503 not-ready 2'

describe.each(['identity', 'app'] as const)('while the database of the %s pool is down', (role) => {
  let proxy: CuttingProxy
  let person: Person
  beforeAll(async () => {
    proxy = await startCuttingProxy(role === 'app' ? database.appUrl : database.identityUrl)
    const urls = { appUrl: database.appUrl, identityUrl: database.identityUrl, [`${role}Url`]: proxy.url }
    const pools = await openPools({ ...urls, appConnections: 4, identityConnections: 2 }, () => {})
    person = signedInAt(await testApi({ pools }))
    return async () => {
      await closePools(pools)
      await proxy.close()
    }
  })

  test('a signed-in browser is told to come again and never that it is nobody; afterwards everything is answered', async () => {
    expect((await askAtOnce(person)).every(({ status }) => status < 300)).toBe(true)
    await proxy.goDown()
    const during = (await askAtOnce(person)).map(sayOf)
    await proxy.comeUp()
    expect(new Set(during)).toEqual(new Set([NOT_READY]))
    expect((await askAtOnce(person)).every(({ status }) => status < 300)).toBe(true)
  })

  test('look-ups that the connection is lost under are told the same', async () => {
    proxy.cutNext({ at: 'round trip', nth: 1, side: 'after' })
    const answers = await askAtOnce(person)
    expect(proxy.disarm()).toBe(false)
    expect(answers.map(sayOf)).toContain(NOT_READY)
    expect(answers.every(({ status }) => status < 300 || status === 503)).toBe(true)
  })
})

describe.each(['identity', 'app'] as const)('while every connection of the %s pool is taken', (role) => {
  // The API itself waits five seconds for a connection; the words of the refusal are the same after one.
  const scarce = new pg.Pool({ connectionString: database[`${role}Url`], max: 1, connectionTimeoutMillis: 1_000 })
  afterAll(() => scarce.end())

  test('a signed-in browser is told to come again and never that it is nobody; afterwards it is answered', async () => {
    const person = signedInAt(await testApi({ pools: { ...direct.deps.pools, [role]: scarce } }))
    const statusNow = async () => (await person.get(seasons)).status
    await expect.poll(statusNow).toBe(200)
    const taken = await scarce.connect()
    const during = await Promise.all(Array.from({ length: MANY }, () => person.get(seasons)))
    taken.release()
    expect(new Set(during.map(sayOf))).toEqual(new Set([NOT_READY]))
    expect(await statusNow()).toBe(200)
  })
})

test('control: only a login that the database does not know is nobody', async () => {
  const stranger = makePerson(direct.app)
  stranger.cookie = `__Host-espalier-login=${'A'.repeat(43)}`
  expect(sayOf(await stranger.get(paths.me))).toBe('401 not-signed-in ')
})
