import { createHash } from 'node:crypto'
import { canonicalJson, type PlainValue } from '@espalier/domain/ledger'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import type { Refusal } from './problem-error'

const KEY = /^("?)([0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12})\1$/

/** The key of a write: a UUID, bare or as a Structured Field string in quotes. */
export function readIdempotencyKey(header: string | readonly string[] | undefined): Result<string, Refusal> {
  const key = typeof header === 'string' ? KEY.exec(header)?.[2] : undefined
  return key === undefined
    ? refuse({
        code: 'idempotency-key-missing',
        errors: [{ pointer: 'header/idempotency-key', detail: 'must be a UUID' }],
      })
    : ok(key)
}

/** What makes a repeated command the same command: method, path and canonical body (RFC 8785). */
export function commandFingerprint(method: string, path: string, body: unknown): Buffer {
  const canonical = body === undefined ? '' : canonicalJson(body as PlainValue)
  return createHash('sha256').update(`${method}\n${path}\n${canonical}`, 'utf8').digest()
}
