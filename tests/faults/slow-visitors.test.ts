import { type AddressInfo, connect } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { paths, pathTo } from '@espalier/contract/paths'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildApp } from '../../apps/api/src/app'
import { API_HEADERS } from '../../apps/api/src/http/security-headers'
import { ORIGIN, testApi } from '../factories/api'
import { makeClub } from '../factories/club'
import { freshId } from '../support/database'

/** Far less than a server grants, so that the test need not wait. */
const LIMITS = { headersMilliseconds: 300, requestMilliseconds: 450, idleMilliseconds: 60_000, checkMilliseconds: 50 }

const api = await testApi()
const club = await makeClub(api)
const app = await buildApp(api.deps, undefined, LIMITS)
beforeAll(() => app.listen({ host: '127.0.0.1', port: 0 }))
afterAll(() => app.close())

/** Sends its parts a moment apart and never hangs up; what it has heard once the server is rid of it. */
async function trickle(parts: readonly string[]): Promise<string> {
  const { port } = app.server.address() as AddressInfo
  const socket = connect({ port, host: '127.0.0.1', allowHalfOpen: true })
  let heard = ''
  socket.on('data', (chunk) => {
    heard += String(chunk)
  })
  // Whoever writes on after the server has hung up is told so by an error.
  socket.on('error', () => {})
  const sending = async () => {
    for (const part of parts) {
      if (socket.destroyed) return
      socket.write(part)
      await pause(EVERY_MILLISECONDS)
    }
  }
  void sending()
  try {
    await expect.poll(() => heard, WITHIN).not.toBe('')
    await expect.poll(countConnections, WITHIN).toBe(0)
  } finally {
    socket.destroy()
  }
  return heard
}

const EVERY_MILLISECONDS = 50
/** Ten times the limits: a busy machine is late. */
const WITHIN = { interval: 20, timeout: 4_500 }

function countConnections(): Promise<number> {
  return new Promise((resolve, reject) => {
    app.server.getConnections((error, count) => (error ? reject(error) : resolve(count)))
  })
}

const seasons = pathTo(paths.seasons, { clubId: club.clubId })
const body = JSON.stringify({ id: freshId(), name: 'Slow', firstDay: '2026-09-01', lastDay: '2026-12-20' })
const head = [
  `POST ${seasons} HTTP/1.1`,
  'host: club.test',
  `origin: ${ORIGIN}`,
  `cookie: ${club.administrator.cookie}`,
  `idempotency-key: ${freshId()}`,
  'content-type: application/json',
  `content-length: ${body.length}`,
].join('\r\n')
const wholeHead = `${head}\r\n\r\n`
const forever = (first: string, then: string) => [first, ...Array.from({ length: 100 }, () => then)]

const VISITORS = [
  ['sends half its headers and waits', [head.slice(0, 60)]],
  ['sends a header line now and then, for ever', forever(`${head}\r\n`, 'x-more: 1\r\n')],
  ['sends half its body and waits', [wholeHead + body.slice(0, 20)]],
  ['sends a byte of its body now and then, for ever', forever(wholeHead, ' ')],
] as const

test('who is too slow is told so with the headers of the API, and hung up on', async () => {
  const heard = await Promise.all(VISITORS.map(async ([name, parts]) => ({ name, text: await trickle(parts) })))
  for (const { name, text } of heard) {
    const [answerHead = '', answerBody = ''] = text.split('\r\n\r\n')
    expect(answerHead.split('\r\n')[0], name).toBe('HTTP/1.1 408 Request Timeout')
    for (const [header, value] of Object.entries(API_HEADERS)) expect(answerHead, name).toContain(`${header}: ${value}`)
    expect(JSON.parse(answerBody), name).toMatchObject({ status: 408, code: 'too-slow' })
  }
})

test('control: who is quick enough is answered, by the same limits', async () => {
  const text = await trickle([`${head}\r\nconnection: close\r\n\r\n${body.slice(0, 20)}`, body.slice(20)])
  expect(text).toMatch(/^HTTP\/1\.1 201 /)
})
