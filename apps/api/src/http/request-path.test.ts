import { paths, pathTo } from '@espalier/contract/paths'
import { problem } from '@espalier/contract/problems'
import { describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { ORIGIN, TEST_SETTINGS, testApi } from '../../../../tests/factories/api'
import { addMember, makeClub } from '../../../../tests/factories/club'
import { makePerson } from '../../../../tests/factories/person'
import { asOwner, freshId, testDatabase } from '../../../../tests/support/database'
import { API_HEADERS } from './security-headers'

const api = await testApi()
const club = await makeClub(api)
const { clubId, administrator } = club
const seasonsPath = pathTo(paths.seasons, { clubId })

const seasonBody = () => ({ id: freshId(), name: `S ${freshId()}`, firstDay: '2026-09-01', lastDay: '2026-12-20' })

function post(headers: Record<string, string>, payload: string) {
  const own = { cookie: administrator.cookie!, 'idempotency-key': freshId() }
  return api.app.inject({ method: 'POST', url: seasonsPath, headers: { ...own, ...headers }, payload })
}

describe('a write comes from the page itself', () => {
  const sites = ['same-origin', 'same-site', 'cross-site', 'none', null] as const
  const origins = [ORIGIN, 'https://evil.test', 'null', `${ORIGIN}.evil.test`, null] as const
  const cells = sites.flatMap((site) => origins.map((origin) => ({ site, origin })))

  test.each(cells)('Sec-Fetch-Site $site, Origin $origin', async ({ site, origin }) => {
    const isOurs = site === null ? origin === ORIGIN : site === 'same-origin'
    const headers = {
      'content-type': 'application/json',
      ...(site === null ? {} : { 'sec-fetch-site': site }),
      ...(origin === null ? {} : { origin }),
    }
    const answer = await post(headers, JSON.stringify(seasonBody()))
    expect(answer.statusCode).toBe(isOurs ? 201 : 403)
    if (!isOurs) expect(answer.json().code).toBe('cross-site')
  })

  test.each([
    'text/plain',
    'application/x-www-form-urlencoded',
    'multipart/form-data; boundary=x',
    'application/jsonp',
  ])('%s is not read', async (type) => {
    const answer = await post({ origin: ORIGIN, 'content-type': type }, JSON.stringify(seasonBody()))
    expect(answer.json()).toMatchObject({ status: 415, code: 'json-only' })
  })
})

describe('a body is read strictly', () => {
  const id = '01900000-0000-7000-8000-000000000001'
  const good = `"id":"${id}","firstDay":"2026-09-01","lastDay":"2026-12-20"`
  test.each([
    ['broken', `{${good},"name":"A"`, 'body-not-json'],
    ['with a name twice', `{${good},"name":"A","name":"B"}`, 'body-not-json'],
    ['with a name twice, spelled otherwise', `{${good},"name":"A","n\\u0061me":"B"}`, 'body-not-json'],
    ['reaching for a prototype', `{${good},"name":"A","__proto__":{"x":1}}`, 'body-not-json'],
    ['reaching for a constructor', `{${good},"name":"A","constructor":{"prototype":{}}}`, 'body-not-json'],
    ['nested a thousand deep', `{${good},"name":${'['.repeat(1000)}${']'.repeat(1000)}}`, 'body-not-json'],
    ['with an unknown field', `{${good},"name":"A","clubId":"${id}"}`, 'bad-request'],
    ['with a wrong type', `{${good},"name":7}`, 'bad-request'],
    ['that is a list', '[]', 'bad-request'],
    ['that is missing', '', 'bad-request'],
  ])('%s', async (_, payload, code) => {
    const answer = await post({ origin: ORIGIN, 'content-type': 'application/json' }, payload)
    expect(answer.json()).toMatchObject({ status: 400, code })
  })

  test('an unknown field is pointed at', async () => {
    const answer = await administrator.send('POST', seasonsPath, { ...seasonBody(), 'a/b~c': 1 })
    expect(answer.json.errors).toEqual([{ pointer: '/a~1b~0c', detail: 'is not known here' }])
  })

  test('more than 64 KiB is too large', async () => {
    const payload = JSON.stringify({ ...seasonBody(), name: 'x'.repeat(65_536) })
    const answer = await post({ origin: ORIGIN, 'content-type': 'application/json' }, payload)
    expect(answer.json()).toMatchObject({ status: 413, code: 'too-large' })
  })
})

describe('the idempotency key', () => {
  test('is asked for, and must be a UUID, bare or in quotes', async () => {
    const json = { origin: ORIGIN, 'content-type': 'application/json' }
    for (const key of ['', 'abc', `"${freshId()}`]) {
      const answer = await post({ ...json, 'idempotency-key': key }, JSON.stringify(seasonBody()))
      expect(answer.json()).toMatchObject({ status: 400, code: 'idempotency-key-missing' })
    }
    const quoted = await post({ ...json, 'idempotency-key': `"${freshId()}"` }, JSON.stringify(seasonBody()))
    expect(quoted.statusCode).toBe(201)
  })

  test('with the same body replays the stored answer; with another body it is refused', async () => {
    const key = freshId()
    const body = seasonBody()
    const first = await administrator.send('POST', seasonsPath, body, { key })
    const second = await administrator.send('POST', seasonsPath, { ...body }, { key })
    expect(second.json).toEqual(first.json)
    expect(second.status).toBe(first.status)
    expect(second.headers['idempotency-replayed']).toBe('true')
    expect(first.headers['idempotency-replayed']).toBeUndefined()
    const other = await administrator.send('POST', seasonsPath, { ...body, name: 'Other' }, { key })
    expect(other.json).toMatchObject({ status: 422, code: 'key-used-for-another-command' })
  })

  test('is free again after a refusal: the retry is judged afresh', async () => {
    const key = freshId()
    const body = { ...seasonBody(), lastDay: '2026-08-01' }
    expect((await administrator.send('POST', seasonsPath, body, { key })).status).toBe(400)
    expect((await administrator.send('POST', seasonsPath, { ...body, lastDay: '2026-12-01' }, { key })).status).toBe(
      201,
    )
  })
})

describe('signed in or not', () => {
  test.each([
    ['no cookie', undefined],
    ['a made-up token', `__Host-espalier-login=${'A'.repeat(43)}`],
    ['a malformed token', '__Host-espalier-login=short'],
    ['the name twice', `__Host-espalier-login=${'A'.repeat(43)}; __Host-espalier-login=${'B'.repeat(43)}`],
  ])('%s is not signed in', async (_, cookie) => {
    const answer = await api.app.inject({ url: paths.me, headers: cookie === undefined ? {} : { cookie } })
    expect(answer.json()).toMatchObject({ status: 401, code: 'not-signed-in' })
  })

  test('signing out ends the login at once; the cookie is cleared', async () => {
    const { person } = await addMember(club, [{ role: 'auditor', teamId: null }])
    expect((await person.get(paths.me)).status).toBe(200)
    const out = await person.send('DELETE', paths.currentLogin, {})
    expect(out.status).toBe(204)
    expect(String(out.headers['set-cookie'])).toContain('Max-Age=0')
    expect((await person.get(paths.me)).status).toBe(401)
  })

  test('a login ends after fourteen days without use, and after thirty days in any case', async () => {
    const DAY = 86_400_000
    const start = api.clock.now
    const { person } = await addMember(club, [{ role: 'auditor', teamId: null }])
    const statusAfter = async (days: number) => {
      api.clock.now = start + days * DAY
      return (await person.get(paths.me)).status
    }
    expect([
      await statusAfter(13.9),
      await statusAfter(27.7),
      await statusAfter(29.9),
      await statusAfter(30.1),
    ]).toEqual([200, 200, 200, 401])
    api.clock.now = start
    const idle = await addMember(club, [{ role: 'auditor', teamId: null }])
    api.clock.now = start + 14.01 * DAY
    expect((await idle.person.get(paths.me)).status).toBe(401)
    api.clock.now = start
  })

  test('a database that cannot be asked is 503 and never "nobody"', async () => {
    const broken = await testApi({ pools: { ...api.deps.pools, identity: { query: gone } as never } })
    const answer = await broken.app.inject({ url: paths.me, headers: { cookie: administrator.cookie! } })
    expect(answer.json()).toMatchObject({ status: 503, code: 'not-ready' })
    expect(answer.headers['retry-after']).toBe('2')
  })
})

async function gone(): Promise<never> {
  throw Object.assign(new Error('gone'), { code: 'ECONNREFUSED' })
}

describe('limits', () => {
  const limits = {
    ...TEST_SETTINGS.limits,
    anonymous: { requests: 3, windowSeconds: 60 },
    login: { requests: 4, windowSeconds: 60 },
  }

  test('anonymous requests by address and signed-in ones by account: refused at N+1, free again after the window', async () => {
    const limited = await testApi({ settings: { ...TEST_SETTINGS, limits } })
    const anonymous = makePerson(limited.app)
    const statuses = []
    for (let at = 0; at < 4; at += 1) statuses.push((await anonymous.get(paths.me)).status)
    expect(statuses).toEqual([401, 401, 401, 429])
    const refused = await anonymous.get(paths.me)
    expect(refused.json.code).toBe('too-many')
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0)
    expect(refused.headers.ratelimit).toMatch(/^"default";r=0;t=\d+$/)

    const signedIn = { get: () => limited.app.inject({ url: paths.me, headers: { cookie: administrator.cookie! } }) }
    const own = []
    for (let at = 0; at < 5; at += 1) own.push((await signedIn.get()).statusCode)
    expect(own).toEqual([200, 200, 200, 200, 429])
    limited.clock.now += 61_000
    expect((await signedIn.get()).statusCode).toBe(200)
  })

  test('a forged X-Forwarded-For does not make another visitor', async () => {
    const limited = await testApi({ settings: { ...TEST_SETTINGS, limits } })
    const statuses = []
    for (let at = 0; at < 4; at += 1) {
      const headers = { 'x-forwarded-for': `192.0.2.${at}`, 'x-real-ip': `192.0.2.${at}` }
      statuses.push((await limited.app.inject({ url: paths.me, headers })).statusCode)
    }
    expect(statuses.at(-1)).toBe(429)
  })
})

describe('every answer', () => {
  test.each([
    ['200', () => administrator.get(seasonsPath)],
    ['400', () => administrator.get('/v1/clubs/not-a-uuid')],
    ['401', () => makePerson(api.app).get(seasonsPath)],
    ['403', () => administrator.send('POST', seasonsPath, {}, { headers: { 'sec-fetch-site': 'cross-site' } })],
    ['404', () => administrator.get('/v1/nothing')],
    ['415', () => administrator.send('POST', seasonsPath, {}, { headers: { 'content-type': 'text/plain' } })],
  ])('of status %s carries the security headers and says nothing of the server', async (status, ask) => {
    const answer = await ask()
    expect(String(answer.status)).toBe(status)
    expect(answer.headers).toMatchObject(API_HEADERS)
    expect(answer.headers['x-powered-by']).toBeUndefined()
    expect(answer.headers['access-control-allow-origin']).toBeUndefined()
    if (answer.status >= 400) {
      expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8')
      expect(z.parse(problem, answer.json).status).toBe(answer.status)
    }
  })

  test('of a bug is a 500 that tells nothing', async () => {
    const broken = await testApi({ newId: () => 'no uuid' })
    const person = makePerson(broken.app)
    person.cookie = administrator.cookie
    const answer = await person.send('POST', seasonsPath, seasonBody())
    expect(answer.json).toEqual({
      type: 'urn:espalier:problem:broken',
      title: 'Something broke on our side; nothing was changed',
      status: 500,
      instance: 'urn:uuid:no uuid',
      code: 'broken',
    })
  })

  test('health needs no login: alive always, ready while the database answers', async () => {
    expect((await api.app.inject('/livez')).statusCode).toBe(200)
    expect((await api.app.inject('/readyz')).statusCode).toBe(200)
    const ahead = await testApi({ migrations: [...api.deps.migrations, '20990101000000_from_tomorrow'] })
    expect((await ahead.app.inject('/livez')).statusCode).toBe(200)
    expect((await ahead.app.inject('/readyz')).json()).toMatchObject({ status: 503, code: 'not-ready' })
  })
})

test('a stored answer holds ids and a version, never a name', async () => {
  const rows = await asOwner<{ result: Record<string, unknown> }>(
    await testDatabase(),
    'select result from idempotency where club_id = $1',
    [clubId],
  )
  expect(rows.length).toBeGreaterThan(5)
  expect(rows.every(({ result }) => Object.keys(result).sort().join() === 'entry,id,version')).toBe(true)
})
