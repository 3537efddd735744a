import httpProxy, { type FastifyHttpProxyOptions } from '@fastify/http-proxy'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { ProblemError } from './problem-error'
import { sendProblem } from './problems'
import { API_HEADERS } from './security-headers'
import { VISITOR_HEADER, WEB_KEY_HEADER } from './visitor'

const POLICY = 'content-security-policy'

/**
 * What an answer of Next gets where Next did not say so itself: its redirects and the files it built. Only framing is
 * refused by the policy, because one of these files is a worker's script and would be bound by more.
 */
const PAGE_HEADERS = {
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'strict-origin-when-cross-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': API_HEADERS['permissions-policy'],
  [POLICY]: "frame-ancestors 'none'",
} as const

/**
 * A page is read without a body, so whatever speaks of one, or asks for another kind of connection, ends here; so does
 * a key that only Next may send to us.
 */
const ENDS_HERE: ReadonlySet<string> = new Set([
  'content-length',
  'content-type',
  'expect',
  'keep-alive',
  'te',
  'trailer',
  'transfer-encoding',
  'upgrade',
  WEB_KEY_HEADER,
])

/** Everything that is not the API's is a page: it is passed to Next, which sets the headers of its pages itself. */
export async function passPagesOn(app: FastifyInstance, webOrigin: string): Promise<void> {
  await app.register(async (pages) => {
    // The proxy brings parsers of its own, which take every body as it is.
    pages.removeAllContentTypeParsers()
    pages.addHook('onRequest', async (request) => {
      if (!isPlainPath(request.url)) throw new ProblemError({ code: 'not-found' })
    })
    await pages.register(httpProxy, proxyTo(webOrigin))
  })
}

/** Files that Next made when it was built; all else of a page is made for one answer. */
export function isBuiltFile(url: string): boolean {
  return url.startsWith('/_next/static/')
}

/** Begins with one slash and climbs nowhere: two readers of an address that is not plain may each read another one. */
export function isPlainPath(url: string): boolean {
  const [path = ''] = url.split('?', 1)
  if (!path.startsWith('/') || ODD_SIGNS.test(path)) return false
  const parts = decode(path)?.split('/')
  return parts?.every((part) => part !== '.' && !part.startsWith('..') && !part.endsWith('..')) ?? false
}

/** Two slashes together; a backslash; a slash, a backslash or a control character that is hidden by an escape. */
const ODD_SIGNS = /\/\/|\\|%(2f|5c|[01][0-9a-f]|7f)/i

function decode(path: string): string | null {
  try {
    return decodeURIComponent(path)
  } catch {
    return null
  }
}

function proxyTo(webOrigin: string): FastifyHttpProxyOptions {
  return {
    upstream: webOrigin,
    prefix: '/',
    // Pages are read; whatever writes goes to the API.
    httpMethods: ['GET', 'HEAD'],
    config: { proxied: true },
    disableRequestLogging: true,
    replyOptions: {
      // Who asked may ask again; a server that cannot answer is not asked more.
      retryDelay: () => null,
      onError: (reply) => {
        const { request } = reply as FastifyReply
        sendProblem(request, reply as FastifyReply, { code: 'not-ready' })
      },
      rewriteRequestHeaders: (request, headers) => {
        const { id, ip } = request as FastifyRequest
        return {
          ...Object.fromEntries(Object.entries(headers).filter(([name]) => !ENDS_HERE.has(name))),
          'x-request-id': id,
          'x-forwarded-host': request.headers.host ?? '',
          // Overwrites what a visitor may have sent under this name.
          [VISITOR_HEADER]: ip,
        }
      },
      rewriteHeaders: (headers) => {
        // How Next keeps its connection to us says nothing of ours to the visitor.
        const { 'x-powered-by': _, connection: __, 'keep-alive': ___, ...kept } = headers
        return { ...PAGE_HEADERS, ...kept, [HSTS]: API_HEADERS[HSTS] }
      },
    },
  }
}

const HSTS = 'strict-transport-security'
