import { paths, pathTo } from '@espalier/contract/paths'
import { afterAll, describe, expect, test, vi } from 'vitest'
import { closePools, openPools } from '../../apps/api/src/db/pool'
import { testApi } from '../factories/api'
import { makeClub } from '../factories/club'
import { makeFurnishedClub, reportOf } from '../factories/furnished-club'
import { type Answer, makePerson, type Person } from '../factories/person'
import { asOwner, freshId, testDatabase } from '../support/database'
import { startCuttingProxy } from './support/cutting-proxy'

// Each cut costs a new connection, and a busy machine is slow to make one.
vi.setConfig({ testTimeout: 60_000 })

const database = await testDatabase()
const proxy = await startCuttingProxy(database.appUrl)
const { identityUrl } = database
const pools = await openPools({ appUrl: proxy.url, identityUrl, appConnections: 1, identityConnections: 2 }, () => {})
const direct = await testApi()
const cuttable = await testApi({ pools })
afterAll(async () => {
  await closePools(pools)
  await proxy.close()
})

/** The same login, at the API whose connection can be cut. */
function throughProxy(person: Person): Person {
  const same = makePerson(cuttable.app)
  same.cookie = person.cookie
  return same
}

async function countEntries(clubId: string): Promise<number> {
  const text = 'select count(*)::int as count from ledger_entry where club_id = $1'
  return (await asOwner<{ count: number }>(database, text, [clubId]))[0]!.count
}

/** A club and a command of its administrator: one person more. */
async function preparePerson() {
  const club = await makeClub(direct)
  const { clubId } = club
  const person = throughProxy(club.administrator)
  return {
    person,
    clubId,
    countOwnEntries: () => countEntries(clubId),
    send: (key: string, id = key) => {
      const body = { id, displayName: 'Pat Example', roles: [{ role: 'auditor', teamId: null }] }
      return person.send('POST', pathTo(paths.people, { clubId }), body, { key })
    },
  }
}

const isReplay = (answer: Answer) => answer.headers['idempotency-replayed'] === 'true'

describe('a connection lost at COMMIT: the outcome is unknown, and the same command again leaves one effect', () => {
  test.each([
    { side: 'before', effects: 0 },
    { side: 'after', effects: 1 },
  ] as const)('$side the database took it', async ({ side, effects }) => {
    const { countOwnEntries, send } = await preparePerson()
    const before = await countOwnEntries()
    const key = freshId()
    proxy.cutNext({ at: 'commit', nth: 1, side })
    const lost = await send(key)
    expect(lost.json).toMatchObject({ status: 503, code: 'outcome-unknown' })
    expect(lost.headers['retry-after']).toBe('2')
    expect(await countOwnEntries()).toBe(before + effects)

    const again = await send(key)
    expect([again.status, isReplay(again)]).toEqual([201, effects === 1])
    expect(await countOwnEntries()).toBe(before + 1)
    // The controls: under a new key it is another command, which only the id can still tell apart; made anew, it is done.
    expect((await send(freshId(), key)).json).toMatchObject({ status: 409, code: 'already-exists' })
    const anew = await send(freshId())
    expect([anew.status, isReplay(anew)]).toEqual([201, false])
    expect(await countOwnEntries()).toBe(before + 2)
  })

  test.each([
    { side: 'before', effects: 0, second: 'applied' },
    { side: 'after', effects: 1, second: 'replayed' },
  ] as const)("$side the database took it, in a phone's batch", async ({ side, effects, second }) => {
    const club = await makeFurnishedClub(direct)
    const [team] = club.teams
    const person = throughProxy(team.coach.person)
    const operations = [reportOf(team, [club.stageId])]
    const path = pathTo(paths.operations, { clubId: club.clubId })
    const send = async () => (await person.send('POST', path, { operations })).json.results[0]
    const before = await countEntries(club.clubId)
    // The first transaction of a batch only asks who sends it.
    proxy.cutNext({ at: 'commit', nth: 2, side })
    expect(await send()).toMatchObject({ status: 'unknown', entry: null, problem: { code: 'outcome-unknown' } })
    expect(await countEntries(club.clubId)).toBe(before + effects)
    const again = await send()
    expect(again).toMatchObject({ status: second, problem: null })
    expect(await countEntries(club.clubId)).toBe(before + 1)
    expect(await send()).toEqual({ ...again, status: 'replayed' })
  })
})

const ROUND_TRIPS_MAX = 40

/** Cuts at the first round trip, then at the second, and so on, until there is none left to cut; how many there were. */
async function cutEverywhere(side: 'before' | 'after', attempt: () => Promise<Answer>): Promise<readonly Answer[]> {
  const answers: Answer[] = []
  for (let nth = 1; nth <= ROUND_TRIPS_MAX; nth += 1) {
    proxy.cutNext({ at: 'round trip', nth, side })
    const answer = await attempt()
    if (proxy.disarm()) return answers
    answers.push(answer)
  }
  throw new Error('the attempt never came to its end')
}

describe.each(['before', 'after'] as const)('a connection lost %s any statement', (side) => {
  test('of a command answers 503, and the same command again leaves one effect', async () => {
    const { clubId, countOwnEntries, send } = await preparePerson()
    let expected = await countOwnEntries()
    let key = ''
    const answers = await cutEverywhere(side, async () => {
      key = freshId()
      const answer = await send(key)
      if (answer.status === 503) expect((await send(key)).status).toBe(201)
      expected += 1
      expect(await countOwnEntries()).toBe(expected)
      return answer
    })
    expect(answers.length).toBeGreaterThan(8)
    expect(answers.map(({ json }) => json.code)).toEqual([
      ...answers.slice(1).map(() => 'not-ready'),
      'outcome-unknown',
    ])
    const text = 'select count(*)::int as open from idempotency where club_id = $1 and status is null'
    expect(await asOwner(database, text, [clubId])).toEqual([{ open: 0 }])
  })

  test('of a reading through Prisma answers 503, and the next one is answered', async () => {
    const { clubId, person } = await preparePerson()
    const answers = await cutEverywhere(side, async () => {
      const answer = await person.get(pathTo(paths.seasons, { clubId }))
      if (answer.status !== 200) expect((await person.get(pathTo(paths.seasons, { clubId }))).status).toBe(200)
      return answer
    })
    expect(answers.length).toBeGreaterThan(2)
    expect(answers.every(({ status }) => status === 503)).toBe(true)
  })
})
