import type { FastifyReply } from 'fastify'

/**
 * Headers of every answer of the API, of whatever status. An answer opened in a tab can run nothing, be framed by
 * nobody, and is stored by no cache.
 */
export const API_HEADERS = {
  'content-security-policy': "default-src 'none'; frame-ancestors 'none'; sandbox",
  'strict-transport-security': 'max-age=63072000; includeSubDomains',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'geolocation=(), camera=(), microphone=()',
  'x-frame-options': 'DENY',
  'cache-control': 'no-store',
  vary: 'Cookie, Sec-Fetch-Site, Origin',
} as const

export function setApiHeaders(reply: FastifyReply): void {
  reply.headers(API_HEADERS)
}
