import { paths, pathTo } from '@espalier/contract/paths'
import { problems } from '@espalier/contract/problems'
import { uuid } from '@espalier/contract/quantities'
import { type Operation, type OperationResult, operation } from '@espalier/contract/records'
import { type Result, unreachable } from '@espalier/domain/quantities'
import * as z from 'zod/mini'
import type { CommandAnswer, CommandRequest } from '../../commands/run-command'
import type { Deps, Log } from '../../deps'
import { commandFingerprint } from '../../http/idempotency'
import type { Login } from '../../http/logins'
import type { Refusal } from '../../http/problem-error'
import { refusalOf } from '../../http/problems'
import { keepPlan } from './keep-plan'
import { keepRefused } from './keep-refused'
import { markAttendance } from './mark-attendance'
import { reportSession } from './report-session'

/** One operation of a batch: its own transaction, its own result. A bad one holds up none of the others. */
export async function takeOperation(
  deps: Deps,
  log: Log,
  login: Login,
  clubId: string,
  raw: unknown,
): Promise<OperationResult> {
  const parsed = z.safeParse(operation, raw)
  if (!parsed.success) {
    const id = idOf(raw)
    const refusal: Refusal = { code: 'bad-request', errors: pointersOf(parsed.error) }
    if (id !== null) await keepRefused(deps, log, { clubId, login, operationId: id, code: refusal.code, raw })
    return resultOf(id, refusal)
  }
  const { id } = parsed.data
  try {
    const answer = await apply(deps, requestOf(login, clubId, parsed.data), parsed.data)
    if (answer.ok) return { id, status: statusOf(answer.value), entry: answer.value.entry, problem: null }
    if (problems[answer.refusal.code].status < SERVER_FAULT && answer.refusal.code !== 'still-running')
      await keepRefused(deps, log, { clubId, login, operationId: id, code: answer.refusal.code, raw })
    return resultOf(id, answer.refusal)
  } catch (error) {
    const refusal = refusalOf(error)
    log.error({ operation: id, problem: refusal.code }, 'operation failed')
    return resultOf(id, refusal)
  }
}

const SERVER_FAULT = 500

function apply(deps: Deps, request: CommandRequest, taken: Operation): Promise<Result<CommandAnswer, Refusal>> {
  switch (taken.op) {
    case 'mark-attendance':
      return markAttendance(deps, request, taken.id, taken.body)
    case 'keep-plan':
      return keepPlan(deps, request, taken.id, taken.body)
    case 'report-session':
      return reportSession(deps, request, taken)
    default:
      return unreachable(taken)
  }
}

/** The operation's id is its key: the same id with another content is refused, the same content replayed. */
function requestOf(login: Login, clubId: string, taken: Operation): CommandRequest {
  return {
    clubId,
    accountId: login.accountId,
    key: taken.id,
    fingerprint: commandFingerprint('POST', pathTo(paths.operations, { clubId }), taken),
    ifMatch: undefined,
  }
}

function statusOf(answer: CommandAnswer): 'applied' | 'replayed' {
  return answer.replayed ? 'replayed' : 'applied'
}

/** What may still succeed or has perhaps succeeded is unknown: the phone sends it again. */
function resultOf(id: string | null, refusal: Refusal): OperationResult {
  const { status, title } = problems[refusal.code]
  const errors = (refusal.errors ?? []).map(({ pointer, detail }) => ({ pointer, detail }))
  const isUnknown = status >= SERVER_FAULT || refusal.code === 'still-running'
  return {
    id,
    status: isUnknown ? 'unknown' : 'refused',
    entry: null,
    problem: { code: refusal.code, title, status, errors },
  }
}

function idOf(raw: unknown): string | null {
  const id = z.safeParse(z.looseObject({ id: uuid }), raw)
  return id.success ? id.data.id : null
}

const POINTERS_MAX = 20

function pointersOf(error: z.core.$ZodError): NonNullable<Refusal['errors']> {
  return error.issues.slice(0, POINTERS_MAX).map((issue) => ({
    pointer: issue.path.length === 0 ? '' : `/${issue.path.map(String).join('/')}`,
    detail: issue.message,
  }))
}
