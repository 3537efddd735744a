import { once } from 'node:events'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { type AddressInfo, connect } from 'node:net'
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { TEST_SETTINGS, testApi } from '../../../../tests/factories/api'
import { API_HEADERS } from './security-headers'

// A stand-in for Next that answers as each test says and remembers what it was asked.
const asked: IncomingMessage[] = []
let answer: (request: IncomingMessage, response: ServerResponse) => void = plainPage
const upstream = createServer((request, response) => {
  asked.push(request)
  answer(request, response)
})
await once(upstream.listen(0, '127.0.0.1'), 'listening')
const webOrigin = `http://127.0.0.1:${(upstream.address() as AddressInfo).port}`
afterAll(() => {
  upstream.closeAllConnections()
  upstream.close()
})

const NEXT_POLICY = "default-src 'none'; script-src 'nonce-x'"

function plainPage(_request: IncomingMessage, response: ServerResponse): void {
  response.writeHead(200, { 'content-type': 'text/html', 'x-powered-by': 'Next', [POLICY]: NEXT_POLICY }).end('<p>page')
}

const POLICY = 'content-security-policy'

const { app } = await testApi({ settings: { ...TEST_SETTINGS, webOrigin } })
await app.listen({ host: '127.0.0.1', port: 0 })
const { port } = app.server.address() as AddressInfo

beforeEach(() => {
  asked.length = 0
  answer = plainPage
})

type RawAnswer = { readonly status: number; readonly headers: Record<string, string>; readonly body: string }

/** Sends these bytes, since clients tidy an address before they send it. */
async function sendBytes(firstLine: string, headers: readonly string[] = []): Promise<RawAnswer> {
  const socket = connect(port, '127.0.0.1')
  socket.write(`${[firstLine, 'Host: club.test', 'Connection: close', ...headers].join('\r\n')}\r\n\r\n`)
  const chunks: Buffer[] = []
  for await (const chunk of socket) chunks.push(chunk)
  const text = Buffer.concat(chunks).toString()
  // Whoever asks whether to continue is told so before the answer.
  const [head = '', ...body] = text.replace(/^HTTP\/1\.1 100 Continue\r\n\r\n/, '').split('\r\n\r\n')
  const [statusLine = '', ...lines] = head.split('\r\n')
  const pairs = lines.map((line) => line.split(/:\s(.*)/s).slice(0, 2) as [string, string])
  const named = Object.fromEntries(pairs.map(([name, value]) => [name.toLowerCase(), value]))
  return { status: Number(statusLine.split(' ')[1]), headers: named, body: body.join('\r\n\r\n') }
}

test("a page comes from Next with Next's own policy, and without the name of its server", async () => {
  const page = await app.inject('/clubs?view=all')
  expect([page.statusCode, page.body]).toEqual([200, '<p>page'])
  expect(page.headers[POLICY]).toBe(NEXT_POLICY)
  expect(page.headers['strict-transport-security']).toBe(API_HEADERS['strict-transport-security'])
  expect(page.headers['x-powered-by']).toBeUndefined()
  expect(asked.map((request) => request.url)).toEqual(['/clubs?view=all'])
})

describe('an address that is not plain gets the common 404 with all headers, and Next is not asked', () => {
  test.each([
    '//x',
    '/\\x',
    '/x\\y',
    '/x/../y',
    '/x/%2e%2e/y',
    '/x/.%2E/y',
    '/x/./y',
    '/x//y',
    '/x%2fy',
    '/%5cevil.test',
    '/x%00',
    '/x/..y',
    '/x/%2e%2ey/',
    'http://evil.test/',
    `${webOrigin}/x`,
  ])('%s', async (address) => {
    const page = await sendBytes(`GET ${address} HTTP/1.1`)
    expect(page.status).toBe(404)
    expect(page.headers).toMatchObject(lowered(API_HEADERS))
    expect(JSON.parse(page.body)).toMatchObject({ code: 'not-found' })
    expect(asked).toEqual([])
  })

  test('dots and escapes that hide nothing go on', async () => {
    for (const address of ['/x.y/z', '/_next/static/%5Bid%5D.js', '/x?next=//y/../z\\']) {
      expect((await sendBytes(`GET ${address} HTTP/1.1`)).status).toBe(200)
    }
    expect(asked).toHaveLength(3)
  })
})

test('a reader who asks whether to go on, or announces a body, gets the page', async () => {
  const page = await sendBytes('GET /clubs HTTP/1.1', ['Expect: 100-continue', 'Content-Length: 0'])
  expect([page.status, page.body.includes('<p>page')]).toEqual([200, true])
  expect(asked[0]?.headers.expect).toBeUndefined()
  expect(asked[0]?.headers['content-length']).toBeUndefined()
})

describe('Next cannot answer', () => {
  test('down: 503 with all headers, and when to come again', async () => {
    const alone = await testApi({ settings: { ...TEST_SETTINGS, webOrigin: 'http://127.0.0.1:1' } })
    const page = await alone.app.inject('/clubs')
    expect(page.json()).toMatchObject({ status: 503, code: 'not-ready' })
    expect(page.headers).toMatchObject(API_HEADERS)
    expect(page.headers['retry-after']).toBe('2')
  })

  test('closing the connection without a word: the same 503', async () => {
    answer = (request) => request.socket.destroy()
    const page = await app.inject('/clubs')
    expect(page.json()).toMatchObject({ status: 503, code: 'not-ready' })
    expect(page.headers).toMatchObject(API_HEADERS)
    expect(asked).toHaveLength(1)
  })

  test('its own 503 goes out at once, and it is not asked again', async () => {
    answer = (_request, response) => response.writeHead(503, { 'retry-after': '1' }).end('busy')
    const page = await app.inject('/clubs')
    expect([page.statusCode, page.body, page.headers['retry-after']]).toEqual([503, 'busy', '1'])
    // Long enough for the ten repeats that the proxy makes by itself.
    await new Promise((resolve) => setTimeout(resolve, 200))
    expect(asked).toHaveLength(1)
  })
})

test.each([
  ['a missing built file', '/_next/static/x', 404, {}],
  ['a redirect', '/clubs/', 308, { location: '/clubs' }],
])('%s that Next gave no policy cannot be framed or taken for another type', async (_, url, status, headers) => {
  answer = (_request, response) => response.writeHead(status, { 'content-type': 'text/html', ...headers }).end('<p>')
  const page = await app.inject(url)
  expect(page.statusCode).toBe(status)
  expect(page.headers).toMatchObject({
    [POLICY]: "frame-ancestors 'none'",
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'strict-origin-when-cross-origin',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'strict-transport-security': API_HEADERS['strict-transport-security'],
    ...headers,
  })
})

test('pages and built files are each counted by address, and refused past their limit with all headers', async () => {
  const limits = {
    ...TEST_SETTINGS.limits,
    pages: { requests: 2, windowSeconds: 60 },
    files: { requests: 3, windowSeconds: 60 },
  }
  const limited = await testApi({ settings: { ...TEST_SETTINGS, webOrigin, limits } })
  const statusOf = async (url: string, remoteAddress = '192.0.2.1') =>
    (await limited.app.inject({ url, remoteAddress })).statusCode
  expect([await statusOf('/a'), await statusOf('/b'), await statusOf('/c')]).toEqual([200, 200, 429])
  const files = [1, 2, 3, 4].map((number) => statusOf(`/_next/static/${number}.js`))
  expect((await Promise.all(files)).toSorted()).toEqual([200, 200, 200, 429])
  expect(await statusOf('/a', '192.0.2.2')).toBe(200)
  const refused = await limited.app.inject({ url: '/d', remoteAddress: '192.0.2.1' })
  expect(refused.headers).toMatchObject(API_HEADERS)
  expect(refused.json().code).toBe('too-many')
  limited.clock.now += 61_000
  expect(await statusOf('/a')).toBe(200)
})

function lowered(headers: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(headers).map(([name, value]) => [name.toLowerCase(), value]))
}
