import { hashToken, makeLoginToken } from '../../http/login-cookie'

export type SignInSecret = { readonly token: string; readonly hash: Buffer }

/** 256 random bits for a one-time link; the club keeps the hash. */
export function makeSignInSecret(): SignInSecret {
  const token = makeLoginToken()
  return { token, hash: hashToken(token) }
}

/** The secret stands behind the #, which no browser sends to any server: only the press on the page does. */
export function signInAddress(origin: string, clubId: string, token: string): string {
  return `${origin}/sign-in#${clubId}.${token}`
}
