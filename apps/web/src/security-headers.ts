/** Headers of every answer of the web server; the content security policy differs by page and is made below. */
export const STATIC_HEADERS = [
  ['X-Content-Type-Options', 'nosniff'],
  ['Referrer-Policy', 'strict-origin-when-cross-origin'],
  ['Cross-Origin-Opener-Policy', 'same-origin'],
  ['Cross-Origin-Resource-Policy', 'same-origin'],
  ['Permissions-Policy', 'geolocation=(), camera=(), microphone=()'],
] as const satisfies readonly (readonly [string, string])[]

/** What holds for all pages: nothing is allowed but what the app itself serves. */
const SHARED_DIRECTIVES = [
  "default-src 'none'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "object-src 'none'",
  "frame-ancestors 'none'",
] as const

/** Pages rendered for one answer: scripts and styles carry that answer's nonce. */
export function onlinePolicy(nonce: string, development: boolean): string {
  // React rebuilds server stacks with eval while developing; a built server never allows it.
  const evaluation = development ? " 'unsafe-eval'" : ''
  return [
    ...SHARED_DIRECTIVES,
    `script-src 'nonce-${nonce}' 'strict-dynamic'${evaluation}`,
    development ? "style-src 'self' 'unsafe-inline'" : `style-src 'self' 'nonce-${nonce}'`,
  ].join('; ')
}

/** Field pages are made at build time, so their inline scripts are known by hash and no nonce is needed. */
export function fieldPolicy(scriptHashes: readonly string[]): string {
  const hashes = scriptHashes.map((hash) => ` '${hash}'`).join('')
  return [...SHARED_DIRECTIVES, `script-src 'self'${hashes}`, "style-src 'self'"].join('; ')
}
