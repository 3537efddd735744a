import type { FastifyRequest } from 'fastify'
import type { CommandRequest } from '../commands/run-command'
import { loginOf } from './guards'
import { commandFingerprint, readIdempotencyKey } from './idempotency'
import { unwrap } from './problem-error'

/** The command that a request is: whose it is, its key, and what makes a repetition the same. */
export function commandOf(request: FastifyRequest): CommandRequest {
  const { clubId } = request.params as { readonly clubId: string }
  const key = unwrap(readIdempotencyKey(request.headers['idempotency-key']))
  const ifMatch = request.headers['if-match']
  const [path = ''] = request.url.split('?')
  return {
    clubId,
    accountId: loginOf(request).accountId,
    key,
    fingerprint: commandFingerprint(request.method, path, request.body),
    ifMatch,
  }
}
