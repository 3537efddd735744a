import { type NextRequest, NextResponse } from 'next/server'
import { readFieldScriptHashes } from './field-script-hashes'
import { fieldPolicy, onlinePolicy } from './security-headers'

const POLICY = 'Content-Security-Policy'
const DEVELOPMENT = process.env.NODE_ENV === 'development'

/** Gives every page its content security policy; Next takes the nonce for its own scripts from the request's copy. */
export function proxy(request: NextRequest): NextResponse {
  if (isFieldPage(request.nextUrl.pathname) && !DEVELOPMENT) {
    const response = NextResponse.next()
    response.headers.set(POLICY, fieldPolicy(readFieldScriptHashes()))
    // Kept, but asked for anew each time there is a network: the page and its scripts belong to one build.
    response.headers.set('Cache-Control', 'no-cache')
    return response
  }
  const policy = onlinePolicy(freshNonce(), DEVELOPMENT)
  const headers = new Headers(request.headers)
  headers.set(POLICY, policy)
  const response = NextResponse.next({ request: { headers } })
  response.headers.set(POLICY, policy)
  response.headers.set('Cache-Control', 'no-store')
  return response
}

function isFieldPage(pathname: string): boolean {
  return pathname === '/field' || pathname.startsWith('/field/')
}

/** 128 random bits: never the same for two answers. */
function freshNonce(): string {
  return Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64')
}

// Built files need no policy of their own: they are not documents.
export const config = { matcher: ['/((?!_next/static/).*)'] }
