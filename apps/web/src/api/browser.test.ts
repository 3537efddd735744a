import { problems } from '@espalier/contract/problems'
import { afterEach, expect, test, vi } from 'vitest'
import * as z from 'zod/mini'
import { readIfNewer, readInBrowser, sendCommand } from './browser'
import { newUuid } from './identifiers'

afterEach(() => vi.unstubAllGlobals())

function answerWith(answer: () => Promise<Response>) {
  const asked = vi.fn<(path: string, init: RequestInit) => Promise<Response>>(answer)
  vi.stubGlobal('fetch', asked)
  return asked
}

const key = newUuid()
const command = { method: 'POST', path: '/v1/clubs', body: { a: 1 }, key } as const
const done = { id: newUuid(), version: 4, entry: newUuid() }

test('a command carries its key, the version it was made from and a JSON body', async () => {
  const asked = answerWith(async () => Response.json(done, { status: 201 }))
  expect(await sendCommand({ ...command, fromVersion: 3 })).toEqual({ ok: true, value: done })
  const init = asked.mock.calls[0]?.[1]
  const headers = new Headers(init?.headers)
  expect(headers.get('idempotency-key')).toBe(key)
  expect(headers.get('if-match')).toBe('"3"')
  expect(headers.get('content-type')).toBe('application/json')
  expect(init?.body).toBe('{"a":1}')
})

test('a command on something without versions sends no If-Match', async () => {
  const asked = answerWith(async () => Response.json(done))
  await sendCommand(command)
  expect(new Headers(asked.mock.calls[0]?.[1].headers).has('if-match')).toBe(false)
})

test('a refusal arrives as the problem the API sent, with its pointers', async () => {
  const refused = {
    type: 'about:blank',
    title: problems['bad-request'].title,
    status: 400,
    instance: 'r1',
    code: 'bad-request',
    errors: [{ pointer: '/displayName', detail: 'must be one line' }],
  }
  answerWith(async () => Response.json(refused, { status: 400 }))
  expect(await sendCommand(command)).toEqual({ ok: false, failure: { kind: 'problem', problem: refused } })
})

test('no network is told apart from a refusal', async () => {
  answerWith(async () => {
    throw new TypeError('Failed to fetch')
  })
  expect(await sendCommand(command)).toEqual({ ok: false, failure: { kind: 'unreachable' } })
})

test('an answer cut short counts as no answer: the command may or may not have been done', async () => {
  const cut = new ReadableStream({ start: (controller) => controller.error(new Error('connection reset')) })
  answerWith(async () => new Response(cut, { status: 200 }))
  expect(await sendCommand(command)).toEqual({ ok: false, failure: { kind: 'unreachable' } })
})

test.each([
  ['a page in place of JSON', new Response('<html>', { status: 502 }), 502],
  ['a success outside the contract', Response.json({ id: 'x' }), 200],
])('%s is unreadable, never a success', async (_, response, status) => {
  answerWith(async () => response)
  expect(await readInBrowser('/v1/me', (await import('@espalier/contract/sign-in')).me)).toEqual({
    ok: false,
    failure: { kind: 'unreadable', status },
  })
})

test('what has not changed since its tag is not sent again', async () => {
  const asked = answerWith(async () => new Response(null, { status: 304 }))
  expect(await readIfNewer('/v1/kit', '"abc"', z.string())).toEqual({ ok: true, value: null })
  expect(new Headers(asked.mock.calls[0]?.[1]?.headers).get('if-none-match')).toBe('"abc"')
})

test('what is newer comes with its tag; without a tag nothing is asked of the server', async () => {
  const asked = answerWith(async () => Response.json('kit', { headers: { etag: '"def"' } }))
  expect(await readIfNewer('/v1/kit', null, z.string())).toEqual({ ok: true, value: { value: 'kit', tag: '"def"' } })
  expect(new Headers(asked.mock.calls[0]?.[1]?.headers).has('if-none-match')).toBe(false)
})

test('a conditional read that fails says why, as any other', async () => {
  answerWith(async () => Promise.reject(new TypeError('offline')))
  expect(await readIfNewer('/v1/kit', '"abc"', z.string())).toEqual({ ok: false, failure: { kind: 'unreachable' } })
})
