import type { FastifyReply, FastifyRequest } from 'fastify'

/**
 * One line a request: which route, how it ended, how long it took. The path itself, the query, bodies, cookies and
 * addresses stay out, so that no name, token or child can be in it.
 */
export async function logRequest(request: FastifyRequest, reply: FastifyReply): Promise<void> {
  const line = {
    method: request.method,
    route: request.routeOptions.url ?? 'unknown',
    status: reply.statusCode,
    durationMilliseconds: Math.round(reply.elapsedTime),
    account: request.login?.accountId ?? null,
    problem: request.problemCode,
  }
  if (reply.statusCode >= 500) request.log.error(line, 'failed')
  else if (REFUSALS.has(reply.statusCode)) request.log.warn(line, 'refused')
  else request.log.info(line, 'answered')
}

const REFUSALS: ReadonlySet<number> = new Set([401, 403, 429])
