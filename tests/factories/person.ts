import { createHash, randomBytes } from 'node:crypto'
import { entityTag } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import type { Api } from '../../apps/api/src/http/api'
import { freshId } from '../support/database'
import { ORIGIN } from './api'

export type Answer = {
  readonly status: number
  readonly headers: Readonly<Record<string, string | readonly string[] | number | undefined>>
  readonly text: string
  // biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the route answers and asserts on it.
  readonly json: any
}

export type Sending = {
  readonly key?: string
  readonly fromVersion?: number
  readonly headers?: Readonly<Record<string, string>>
}

/** A browser: it keeps the login cookie and sends what a page of ours would send. */
export type Person = {
  get(path: string, headers?: Readonly<Record<string, string>>): Promise<Answer>
  send(method: 'POST' | 'PUT' | 'DELETE', path: string, body: unknown, sending?: Sending): Promise<Answer>
  signIn(clubId: string, token: string): Promise<Answer>
  cookie: string | null
}

export function newSecret(): { readonly token: string; readonly hash: Buffer } {
  const token = randomBytes(32).toString('base64url')
  return { token, hash: createHash('sha256').update(token).digest() }
}

export function makePerson(app: Api): Person {
  const person: Person = {
    cookie: null,
    get: async (path, headers = {}) =>
      answerOf(await app.inject({ method: 'GET', url: path, headers: { ...cookieOf(person), ...headers } })),
    send: async (method, path, body, { key = freshId(), fromVersion, headers = {} } = {}) =>
      answerOf(
        await app.inject({
          method,
          url: path,
          headers: {
            ...cookieOf(person),
            origin: ORIGIN,
            'content-type': 'application/json',
            'idempotency-key': key,
            ...(fromVersion === undefined ? {} : { 'if-match': entityTag(fromVersion) }),
            ...headers,
          },
          payload: JSON.stringify(body),
        }),
      ),
    signIn: async (clubId, token) => {
      const answer = await person.send('POST', paths.logins, { clubId, token })
      const cookie = answer.headers['set-cookie']
      if (typeof cookie === 'string') person.cookie = cookie.split(';')[0]!
      return answer
    },
  }
  return person
}

function cookieOf(person: Person): Record<string, string> {
  return person.cookie === null ? {} : { cookie: person.cookie }
}

function answerOf(response: Awaited<ReturnType<Api['inject']>>): Answer {
  const text = response.payload
  const isJson = String(response.headers['content-type'] ?? '').includes('json')
  return {
    status: response.statusCode,
    headers: response.headers as Answer['headers'],
    text,
    json: isJson && text !== '' ? JSON.parse(text) : null,
  }
}
