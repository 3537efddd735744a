import { createHash, timingSafeEqual } from 'node:crypto'
import type { IncomingHttpHeaders } from 'node:http'
import { isIP } from 'node:net'

/** Where the front door tells Next, and Next tells the API, the address of whoever asked for the page. */
export const VISITOR_HEADER = 'x-espalier-visitor'

/** The key that only our own Next sends: without it the header above is anybody's claim. */
export const WEB_KEY_HEADER = 'x-espalier-web-key'

type Asking = { readonly ip: string; readonly headers: IncomingHttpHeaders }

/**
 * The address a request is counted by, and used for nothing else: its own, but for a request of our own Next, which is
 * counted by the visitor it makes a page for. Without a key of ours nobody can name another address.
 */
export function visitorOf({ ip, headers }: Asking, webKey: string | null): string {
  const { [VISITOR_HEADER]: visitor, [WEB_KEY_HEADER]: key } = headers
  if (webKey === null || typeof visitor !== 'string' || typeof key !== 'string') return ip
  return isIP(visitor) !== 0 && isSameKey(key, webKey) ? visitor : ip
}

/** Compares hashes, so that neither a key's length nor its first wrong letter shows in the time taken. */
function isSameKey(sent: string, ours: string): boolean {
  return timingSafeEqual(hashOf(sent), hashOf(ours))
}

function hashOf(key: string): Buffer {
  return createHash('sha256').update(key).digest()
}
