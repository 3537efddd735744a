import { createHash, randomBytes } from 'node:crypto'

export const LOGIN_COOKIE = '__Host-espalier-login'

const ATTRIBUTES = 'Path=/; Secure; HttpOnly; SameSite=Lax'
const TOKEN = /^[A-Za-z0-9_-]{43}$/

/** 256 random bits; only the hash is stored. */
export function makeLoginToken(): string {
  return randomBytes(32).toString('base64url')
}

export function hashToken(token: string): Buffer {
  return createHash('sha256').update(token, 'utf8').digest()
}

export function setLoginCookie(token: string, lastsSeconds: number): string {
  return `${LOGIN_COOKIE}=${token}; ${ATTRIBUTES}; Max-Age=${lastsSeconds}`
}

export function clearLoginCookie(): string {
  return `${LOGIN_COOKIE}=; ${ATTRIBUTES}; Max-Age=0`
}

/** The token of the login cookie, or null. Where the name comes twice neither is believed. */
export function readLoginToken(header: string | undefined): string | null {
  if (header === undefined) return null
  const values = header
    .split(';')
    .map((pair) => pair.trim())
    .filter((pair) => pair.startsWith(`${LOGIN_COOKIE}=`))
    .map((pair) => pair.slice(LOGIN_COOKIE.length + 1))
  const [token] = values
  return values.length === 1 && token !== undefined && TOKEN.test(token) ? token : null
}
