import { type CommandResult, entityTag } from '@espalier/contract/commands'
import { assert } from '@espalier/domain/quantities'
import type { CommandAnswer } from '../commands/run-command'

type OutcomeReply = {
  code(status: 200 | 201): unknown
  header(name: string, value: string): unknown
}

/** What every command answers: ids and the version, never the thing itself. A replay says that it is one. */
export function sendOutcome(reply: OutcomeReply, answer: CommandAnswer): CommandResult {
  assert(answer.entry !== null, 'a command of this route writes an entry')
  if (answer.version !== null) reply.header('etag', entityTag(answer.version))
  if (answer.replayed) reply.header('idempotency-replayed', 'true')
  reply.code(answer.status)
  return { id: answer.id, version: answer.version, entry: answer.entry }
}
