import { type CommandResult, commandResult, entityTag } from '@espalier/contract/commands'
import { type Problem, problem } from '@espalier/contract/problems'
import * as z from 'zod/mini'

export type Command = {
  readonly method: 'POST' | 'PUT' | 'PATCH' | 'DELETE'
  readonly path: string
  readonly body: unknown
  /** A UUIDv7 made once for this command: sending it again with the same key changes nothing. */
  readonly key: string
  /** The version the change was made from, where the thing is versioned. */
  readonly fromVersion?: number
}

/** Why a request came to nothing: refused by the API, never answered, or answered with something that is no API's. */
export type Failure =
  | { readonly kind: 'problem'; readonly problem: Problem }
  | { readonly kind: 'unreachable' }
  | { readonly kind: 'unreadable'; readonly status: number }

export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly failure: Failure }

/** Sends a command whose answer is the usual `{id, version, entry}`. */
export function sendCommand(command: Command): Promise<Outcome<CommandResult>> {
  return sendCommandFor(command, commandResult)
}

/** Sends a command with an answer of its own shape, like a sign-in. */
export function sendCommandFor<Value>(command: Command, shape: z.ZodMiniType<Value>): Promise<Outcome<Value>> {
  const headers = new Headers({ 'content-type': 'application/json', 'idempotency-key': command.key })
  if (command.fromVersion !== undefined) headers.set('if-match', entityTag(command.fromVersion))
  return exchange(command.path, { method: command.method, headers, body: JSON.stringify(command.body) }, shape)
}

/** Reads from the API in the browser: the kit, a proof, a cell that opens. */
export function readInBrowser<Value>(path: string, shape: z.ZodMiniType<Value>): Promise<Outcome<Value>> {
  return exchange(path, { method: 'GET' }, shape)
}

export type Newer<Value> = { readonly value: Value; readonly tag: string | null }

/** Asks for something only if it changed since `tag`; null when it did not. */
export async function readIfNewer<Value>(
  path: string,
  tag: string | null,
  shape: z.ZodMiniType<Value>,
): Promise<Outcome<Newer<Value> | null>> {
  const headers = new Headers(tag === null ? {} : { 'if-none-match': tag })
  const answer = await ask(path, { method: 'GET', headers })
  if (answer === null) return UNREACHABLE
  if (answer.response.status === UNCHANGED) return { ok: true, value: null }
  const outcome = readAnswer(answer, shape)
  if (!outcome.ok) return outcome
  return { ok: true, value: { value: outcome.value, tag: answer.response.headers.get('etag') } }
}

const UNCHANGED = 304
const UNREACHABLE = { ok: false, failure: { kind: 'unreachable' } } as const satisfies Outcome<never>

type Answer = { readonly response: Response; readonly body: unknown }

async function exchange<Value>(path: string, init: RequestInit, shape: z.ZodMiniType<Value>): Promise<Outcome<Value>> {
  const answer = await ask(path, init)
  return answer === null ? UNREACHABLE : readAnswer(answer, shape)
}

/** Null where no answer came: no network, a closed connection, an answer cut short. Whether it was done is not known. */
async function ask(path: string, init: RequestInit): Promise<Answer | null> {
  try {
    const response = await fetch(path, { ...init, credentials: 'same-origin', cache: 'no-store', redirect: 'error' })
    const text = await response.text()
    return { response, body: text === '' ? null : parseJson(text) }
  } catch {
    return null
  }
}

function readAnswer<Value>({ response, body }: Answer, shape: z.ZodMiniType<Value>): Outcome<Value> {
  return response.ok ? readValue(response, body, shape) : readProblem(response, body)
}

function readValue<Value>(response: Response, body: unknown, shape: z.ZodMiniType<Value>): Outcome<Value> {
  const parsed = z.safeParse(shape, body)
  return parsed.success
    ? { ok: true, value: parsed.data }
    : { ok: false, failure: { kind: 'unreadable', status: response.status } }
}

function readProblem(response: Response, body: unknown): Outcome<never> {
  const parsed = z.safeParse(problem, body)
  return parsed.success
    ? { ok: false, failure: { kind: 'problem', problem: parsed.data } }
    : { ok: false, failure: { kind: 'unreadable', status: response.status } }
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
