import type { FastifyReply, FastifyRequest } from 'fastify'
import type { Deps, Settings } from '../deps'
import { readIdempotencyKey } from './idempotency'
import { hashToken, readLoginToken } from './login-cookie'
import { type LoginLookup, makeLoginLookup } from './login-lookups'
import type { Login } from './logins'
import { checkContentType, checkOrigin, isUnsafe } from './origin'
import { isBuiltFile } from './pages'
import { ProblemError, unwrap } from './problem-error'
import { makeRateCounter, type RateAnswer, type RateCounter } from './rate-limits'
import type { RouteAccess } from './request-state'
import { visitorOf } from './visitor'

type Counters = Readonly<Record<keyof Settings['limits'], RateCounter>>

/**
 * What happens to a request before its body is read, in this order: a write must come from the page itself and be
 * JSON; a visitor without a login is counted by address; a login is found, or the request ends; a login is counted.
 */
export function makeRequestGuard(deps: Deps) {
  const { limits } = deps.settings
  const counters: Counters = {
    anonymous: makeRateCounter(limits.anonymous, deps.now),
    login: makeRateCounter(limits.login, deps.now),
    operations: makeRateCounter(limits.operations, deps.now),
    checks: makeRateCounter(limits.checks, deps.now),
    pages: makeRateCounter(limits.pages, deps.now),
    files: makeRateCounter(limits.files, deps.now),
  }
  const lookUp = makeLoginLookup(deps.pools.identity, deps.now)
  return async function guardRequest(request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const { access, proxied, uncounted, alsoCounted } = request.routeOptions.config
    if (uncounted === true) return
    if (proxied === true) {
      const kind = isBuiltFile(request.url) ? 'files' : 'pages'
      count(reply, counters[kind], limits[kind].requests, limits[kind].windowSeconds, request.ip)
      return
    }
    if (isUnsafe(request.method)) guardWrite(request, deps)
    if (access === undefined || access.kind === 'open') {
      const visitor = visitorOf(request, deps.settings.webKey)
      count(reply, counters.anonymous, limits.anonymous.requests, limits.anonymous.windowSeconds, visitor)
      return
    }
    request.login = await findLoginOf(request, reply, deps, { counters, lookUp })
    count(reply, counters.login, limits.login.requests, limits.login.windowSeconds, request.login.accountId)
    if (alsoCounted !== undefined) {
      const { requests, windowSeconds } = limits[alsoCounted]
      count(reply, counters[alsoCounted], requests, windowSeconds, request.login.accountId)
    }
    if (request.routeOptions.config.command === true) unwrap(readIdempotencyKey(request.headers['idempotency-key']))
  }
}

function guardWrite(request: FastifyRequest, deps: Deps): void {
  unwrap(checkOrigin(request.headers, deps.settings.origins))
  unwrap(checkContentType(request.headers))
}

/** Whoever sends no login, or one that is over, counts as anonymous, so that guessing is counted too. */
async function findLoginOf(
  request: FastifyRequest,
  reply: FastifyReply,
  deps: Deps,
  { counters, lookUp }: { readonly counters: Counters; readonly lookUp: LoginLookup },
): Promise<Login> {
  const { requests, windowSeconds } = deps.settings.limits.anonymous
  const token = readLoginToken(request.headers.cookie)
  const login = token === null ? null : await lookUp(hashToken(token))
  if (login !== null) return login
  count(reply, counters.anonymous, requests, windowSeconds, visitorOf(request, deps.settings.webKey))
  throw new ProblemError({ code: 'not-signed-in' })
}

function count(reply: FastifyReply, counter: RateCounter, quota: number, windowSeconds: number, key: string): void {
  const answer = counter.count(key)
  // Source of the fields' form: IETF draft "RateLimit header fields for HTTP" (2025-09), Structured Fields.
  reply.header('ratelimit-policy', `"default";q=${quota};w=${windowSeconds}`)
  reply.header('ratelimit', `"default";r=${answer.remaining};t=${answer.resetSeconds}`)
  refuseExcess(answer)
}

function refuseExcess(answer: RateAnswer): void {
  if (!answer.allowed) throw new ProblemError({ code: 'too-many', retryAfterSeconds: answer.resetSeconds })
}

/** The login of a route that asked for one; the guard has put it there. */
export function loginOf(request: FastifyRequest): Login {
  if (request.login === null) throw new ProblemError({ code: 'not-signed-in' })
  return request.login
}

export function memberRoute(permission: (RouteAccess & { kind: 'member' })['permission']) {
  return { access: { kind: 'member', permission } } as const
}

export function commandRoute(permission: (RouteAccess & { kind: 'member' })['permission']) {
  return { access: { kind: 'member', permission }, command: true } as const
}
