import { type Problem, problems } from '@espalier/contract/problems'
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify'
import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod'
import { isLockTimeout, isUnavailable, OutcomeUnknownError } from '../db/failures'
import { describeFailure } from './describe-failure'
import { JsonTextError } from './json-text'
import { ProblemError, type ProblemPointer, type Refusal } from './problem-error'
import { setApiHeaders } from './security-headers'

export const PROBLEM_CONTENT_TYPE = 'application/problem+json; charset=utf-8'

const RETRY_SOON_SECONDS = 2

/** The body of a problem (RFC 9457). Nothing in it but the request id differs between a hidden and a missing thing. */
export function problemBody(refusal: Refusal, requestId: string): Problem {
  const { status, title } = problems[refusal.code]
  return {
    type: `urn:espalier:problem:${refusal.code}`,
    title,
    status,
    ...(refusal.detail === undefined ? {} : { detail: refusal.detail }),
    instance: `urn:uuid:${requestId}`,
    code: refusal.code,
    ...(refusal.errors === undefined ? {} : { errors: refusal.errors.map((error) => ({ ...error })) }),
    ...(refusal.current === undefined ? {} : { current: refusal.current }),
  }
}

export function sendProblem(request: FastifyRequest, reply: FastifyReply, refusal: Refusal): FastifyReply {
  const { status } = problems[refusal.code]
  request.problemCode = refusal.code
  // Also where a page was asked for: the answer is the API's own.
  setApiHeaders(reply)
  if (status === 503) reply.header('retry-after', String(RETRY_SOON_SECONDS))
  if (refusal.retryAfterSeconds !== undefined) reply.header('retry-after', String(refusal.retryAfterSeconds))
  return reply
    .code(status)
    .header('content-type', PROBLEM_CONTENT_TYPE)
    .serializer(JSON.stringify)
    .send(problemBody(refusal, request.id))
}

/** Every error ends here: refusals become their problem, outside failures 503, and bugs a 500 that says nothing. */
export function answerError(error: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const refusal = refusalOf(error)
  if (refusal.code === 'broken' || refusal.code === 'not-ready' || refusal.code === 'outcome-unknown') {
    request.log.error({ failure: describeFailure(error) }, 'request failed')
  }
  return sendProblem(request, reply, refusal)
}

export function refusalOf(error: unknown): Refusal {
  if (error instanceof ProblemError) return error.refusal
  if (error instanceof JsonTextError) return { code: 'body-not-json', detail: error.message }
  if (error instanceof OutcomeUnknownError) return { code: 'outcome-unknown' }
  if (isLockTimeout(error) || isUnavailable(error)) return { code: 'not-ready' }
  return refusalOfFramework(error as FastifyError)
}

function refusalOfFramework(error: FastifyError): Refusal {
  if (hasZodFastifySchemaValidationErrors(error)) {
    const place = (error as { validationContext?: string }).validationContext
    return { code: 'bad-request', errors: listPointers(error.validation, place) }
  }
  switch (error.code) {
    case 'FST_ERR_CTP_BODY_TOO_LARGE':
      return { code: 'too-large' }
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
      return { code: 'json-only' }
    case 'FST_ERR_CTP_INVALID_CONTENT_LENGTH':
    case 'FST_ERR_CTP_EMPTY_JSON_BODY':
      return { code: 'body-not-json' }
    case 'FST_ERR_BAD_URL':
    case 'FST_ERR_MAX_PARAM_LENGTH':
    case 'FST_ERR_ROUTE_MAX_PARAM_LENGTH':
      return { code: 'bad-request', detail: 'the address cannot be read' }
    default:
      return { code: 'broken' }
  }
}

type ValidationIssue = {
  readonly instancePath: string
  readonly message?: string | undefined
  readonly keyword: string
  readonly params: Readonly<Record<string, unknown>>
}

/** Bodies get JSON Pointers (RFC 6901); other places a name like query/seasonId. */
function listPointers(issues: readonly ValidationIssue[], place: string | undefined): readonly ProblemPointer[] {
  const prefix = place === undefined || place === 'body' ? '' : (PLACES[place] ?? place)
  return issues.slice(0, POINTERS_MAX).flatMap((issue) => {
    const path = issue.instancePath === '/' ? '' : issue.instancePath
    const unknown = issue.keyword === 'unrecognized_keys' ? (issue.params['keys'] as readonly string[]) : null
    if (unknown === null) return [{ pointer: `${prefix}${path}`, detail: issue.message ?? 'is not as it should be' }]
    return unknown
      .slice(0, POINTERS_MAX)
      .map((key) => ({ pointer: `${prefix}${path}/${escapePointer(key)}`, detail: 'is not known here' }))
  })
}

const POINTERS_MAX = 50
const PLACES: Readonly<Partial<Record<string, string>>> = { querystring: 'query', params: 'path', headers: 'header' }

/** RFC 6901, section 3. */
export function escapePointer(name: string): string {
  return name.replaceAll('~', '~0').replaceAll('/', '~1')
}
