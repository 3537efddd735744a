/** Name of the cookie of a signed-in browser; the web server only passes it on. */
export const LOGIN_COOKIE = '__Host-espalier-login'

/** 256 bits in base64url. */
const TOKEN = /^[A-Za-z0-9_-]{43}$/

/** The cookie header that passes a login on; null where the value is no login's, which also could break the header. */
export function loginCookieHeader(value: string | undefined): string | null {
  return value !== undefined && TOKEN.test(value) ? `${LOGIN_COOKIE}=${value}` : null
}
