import { entityTag } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { assert } from '@espalier/domain/quantities'
import type { Deps } from '../deps'
import { makeOperatorLink } from '../features/clubs/make-operator-link'
import { makeSignInSecret } from '../features/clubs/sign-in-address'
import type { Api } from '../http/api'
import { DEMO_CLUB_ID, demoId } from './ids'

/** One person of the demo club in front of the real API: every command takes the same path as from a browser. */
export type Actor = {
  send(method: 'POST' | 'PUT', path: string, body: unknown, fromVersion?: number): Promise<unknown>
  get(path: string): Promise<unknown>
}

export type Stage = { readonly app: Api; readonly deps: Deps; readonly origin: string }

/** Signs a person in by a link of their own, and speaks for them from then on. */
export async function signInAs(stage: Stage, memberId: string): Promise<Actor> {
  const secret = makeSignInSecret()
  const made = await makeOperatorLink(stage.deps, { clubId: DEMO_CLUB_ID, memberId, tokenHash: secret.hash })
  assert(made.ok, 'the demo club knows this person')
  const body = { clubId: DEMO_CLUB_ID, token: secret.token }
  const answer = await inject(stage, { method: 'POST', url: paths.logins, headers: {}, body })
  const cookie = String(answer.headers['set-cookie']).split(';')[0]!
  return {
    send: async (method, url, sent, fromVersion) => {
      const condition = fromVersion === undefined ? {} : { 'if-match': entityTag(fromVersion) }
      const headers = { cookie, 'idempotency-key': demoId('key', method, url, memberId, idIn(sent)), ...condition }
      return (await inject(stage, { method, url, headers, body: sent })).json()
    },
    get: async (url) => (await inject(stage, { method: 'GET', url, headers: { cookie } })).json(),
  }
}

function idIn(body: unknown): string {
  return String((body as { readonly id?: string }).id ?? '')
}

type Sending = {
  readonly method: 'GET' | 'POST' | 'PUT'
  readonly url: string
  readonly headers: Readonly<Record<string, string>>
  readonly body?: unknown
}

async function inject({ app, origin }: Stage, { method, url, headers, body }: Sending) {
  const write = body === undefined ? {} : { payload: JSON.stringify(body) }
  const own = body === undefined ? {} : { origin, 'content-type': 'application/json' }
  const answer = await app.inject({ method, url, headers: { ...headers, ...own }, ...write })
  assert(
    answer.statusCode < 400,
    `${method} ${url} of the demo was answered with ${answer.statusCode}: ${answer.payload}`,
  )
  return answer
}
