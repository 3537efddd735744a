import { timingSafeEqual } from 'node:crypto'
import { once } from 'node:events'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { paths } from '@espalier/contract/paths'
import { afterAll, afterEach, describe, expect, test, vi } from 'vitest'
import { TEST_SETTINGS, testApi } from '../../../../tests/factories/api'

vi.mock('node:crypto', async (original) => {
  const crypto = await original<typeof import('node:crypto')>()
  return { ...crypto, timingSafeEqual: vi.fn(crypto.timingSafeEqual) }
})
const compare = vi.mocked(timingSafeEqual).getMockImplementation()!
afterEach(() => {
  vi.mocked(timingSafeEqual).mockImplementation(compare)
})

const WEB_KEY = 'a-key-of-the-tests-that-only-next-has'
const VISITOR = 'x-espalier-visitor'
const KEY = 'x-espalier-web-key'
const limits = { ...TEST_SETTINGS.limits, anonymous: { requests: 2, windowSeconds: 60 } }

/** A stand-in for Next: asks the API one question without a login for each page, as `askAs` says, and tells its status. */
let askAs: (visitor: string) => Record<string, string> = () => ({})
const seen: Record<string, unknown>[] = []
let apiOrigin = ''
const next = createServer(async (request, response) => {
  seen.push(request.headers)
  const answer = await fetch(`${apiOrigin}${paths.me}`, { headers: askAs(String(request.headers[VISITOR])) })
  response.end(String(answer.status))
})
await once(next.listen(0, '127.0.0.1'), 'listening')
const webOrigin = `http://127.0.0.1:${(next.address() as AddressInfo).port}`
afterAll(() => {
  next.closeAllConnections()
  next.close()
})

/** Front door, pages and API, as they stand together; null is a server whose operator set no key. */
async function start(webKey: string | null) {
  const { app } = await testApi({ settings: { ...TEST_SETTINGS, webOrigin, webKey, limits } })
  apiOrigin = await app.listen({ host: '127.0.0.1', port: 0 })
  seen.length = 0
  const readPage = async (remoteAddress: string, headers: Record<string, string> = {}) =>
    (await app.inject({ url: '/clubs', remoteAddress, headers })).body
  const askApi = async (remoteAddress: string, headers: Record<string, string> = {}) =>
    (await app.inject({ url: paths.me, remoteAddress, headers })).statusCode
  return { readPage, askApi }
}

const withKey = (visitor: string) => ({ [VISITOR]: visitor, [KEY]: WEB_KEY })

describe('the visitors of pages', () => {
  test('are each counted by their own address when Next asks for them, also where they ask the API themselves', async () => {
    const { readPage, askApi } = await start(WEB_KEY)
    askAs = withKey
    const statuses = []
    for (let at = 0; at < 3; at += 1) statuses.push(await readPage('192.0.2.1'))
    expect(statuses).toEqual(['401', '401', '429'])
    expect(await readPage('192.0.2.2')).toBe('401')
    expect([await askApi('192.0.2.1'), await askApi('192.0.2.2'), await askApi('192.0.2.2')]).toEqual([429, 401, 429])
  })

  test('all share one counter where no key is set, as does a Next with another key', async () => {
    for (const [ours, sent] of [
      [null, WEB_KEY],
      [WEB_KEY, 'a-key-of-another-start-of-the-launcher'],
    ] as const) {
      const { readPage } = await start(ours)
      askAs = (visitor) => ({ [VISITOR]: visitor, [KEY]: sent })
      const statuses = []
      for (let at = 1; at < 4; at += 1) statuses.push(await readPage(`192.0.2.${at}`))
      expect(statuses).toEqual(['401', '401', '429'])
    }
  })

  test('cannot name another address to Next, nor hand it a key', async () => {
    const { readPage } = await start(WEB_KEY)
    await readPage('192.0.2.1', { [VISITOR]: '198.51.100.9', [KEY]: 'forged' })
    expect(seen).toMatchObject([{ [VISITOR]: '192.0.2.1' }])
    expect(seen[0]?.[KEY]).toBeUndefined()
  })
})

describe('whoever asks the API and names another address', () => {
  const forged = [
    ['without a key', {}],
    ['with an empty key', { [KEY]: '' }],
    ['with a wrong key', { [KEY]: `${WEB_KEY.slice(0, -1)}x` }],
    ['with two keys', { [KEY]: `${WEB_KEY}, ${WEB_KEY}` }],
  ] as const

  async function askThrice(headers: Record<string, string>): Promise<readonly number[]> {
    const { askApi } = await start(WEB_KEY)
    const statuses = []
    for (let at = 1; at < 4; at += 1) {
      statuses.push(await askApi('192.0.2.1', { [VISITOR]: `198.51.100.${at}`, ...headers }))
    }
    return statuses
  }

  test.each(forged)('%s is counted by the address they have', async (_, headers) => {
    expect(await askThrice(headers)).toEqual([401, 401, 429])
  })

  test('control: with the comparison of keys switched off a wrong key makes three visitors', async () => {
    vi.mocked(timingSafeEqual).mockReturnValue(true)
    expect(await askThrice({ [KEY]: 'wrong' })).toEqual([401, 401, 401])
  })

  test('with the key is believed, but of an address only', async () => {
    expect(await askThrice({ [KEY]: WEB_KEY })).toEqual([401, 401, 401])
    expect(await askThrice({ [KEY]: WEB_KEY, [VISITOR]: 'anything' })).toEqual([401, 401, 429])
  })
})
