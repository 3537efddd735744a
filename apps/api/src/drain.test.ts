import { once } from 'node:events'
import { Agent, createServer, get, type IncomingMessage, type ServerResponse } from 'node:http'
import { type AddressInfo, connect } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { watchConnections } from './drain'

async function startServer(answer: (request: IncomingMessage, response: ServerResponse) => void) {
  const server = createServer(answer)
  const drain = watchConnections(server)
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
  const close = () => new Promise<'closed'>((resolve) => server.close(() => resolve('closed')))
  return { server, drain, close, port: (server.address() as AddressInfo).port }
}

const A_MOMENT = 150
const soon = (closed: Promise<string>) => Promise.race([closed, pause(A_MOMENT, 'still open')])

test.each([
  ['has said nothing', ''],
  ['has sent half its headers', 'GET / HTTP/1.1\r\nhost: club'],
  ['has sent half its body', 'POST / HTTP/1.1\r\nhost: club.test\r\ncontent-length: 9\r\n\r\n{'],
])('who %s holds up a closing server until it is hung up on', async (_, text) => {
  const { server, drain, close, port } = await startServer(() => {})
  const visitor = connect(port, '127.0.0.1', () => visitor.write(text))
  await once(server, 'connection')
  await pause(A_MOMENT)
  const closed = close()
  drain.begin()
  // The control: closing alone does not end it.
  expect(await soon(closed)).toBe('still open')
  drain.hangUpOnTheRest()
  expect(await closed).toBe('closed')
  visitor.destroy()
})

test('who is being served is served to the end, as the last on a connection that would otherwise be kept', async () => {
  const served: ServerResponse[] = []
  const { server, drain, close, port } = await startServer((_, response) => served.push(response))
  const answered = new Promise<IncomingMessage>((resolve) => {
    get({ host: '127.0.0.1', port, agent: new Agent({ keepAlive: true }) }, resolve)
  })
  await once(server, 'request')
  const closed = close()
  drain.begin()
  drain.hangUpOnTheRest()
  expect(await soon(closed)).toBe('still open')
  served[0]!.end('whole')
  const answer = await answered
  answer.resume()
  expect([answer.statusCode, answer.headers.connection]).toEqual([200, 'close'])
  expect(await closed).toBe('closed')
})
