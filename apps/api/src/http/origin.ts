import type { IncomingHttpHeaders } from 'node:http'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import type { Refusal } from './problem-error'

const SAFE_METHODS: ReadonlySet<string> = new Set(['GET', 'HEAD', 'OPTIONS'])

export function isUnsafe(method: string): boolean {
  return !SAFE_METHODS.has(method)
}

/**
 * A write comes from the page itself. Browsers say so by Sec-Fetch-Site; where that is absent Origin must be one of
 * ours exactly; where both are absent nothing says so and the write is refused. Source: OWASP Cross-Site Request
 * Forgery Prevention Cheat Sheet, fetch metadata with the fallback on Origin.
 */
export function checkOrigin(headers: IncomingHttpHeaders, origins: readonly string[]): Result<true, Refusal> {
  const site = headers['sec-fetch-site']
  if (site !== undefined) return site === 'same-origin' ? ok(true) : refuse({ code: 'cross-site' })
  const { origin } = headers
  return origin !== undefined && origins.includes(origin) ? ok(true) : refuse({ code: 'cross-site' })
}

/** Forms cannot send this type across sites without asking first, and nothing else is read. */
export function checkContentType(headers: IncomingHttpHeaders): Result<true, Refusal> {
  const type = headers['content-type']
  return type !== undefined && JSON_TYPE.test(type) ? ok(true) : refuse({ code: 'json-only' })
}

const JSON_TYPE = /^application\/json\s*(;\s*charset\s*=\s*"?utf-8"?\s*)?$/i
