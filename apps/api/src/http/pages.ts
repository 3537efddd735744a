import httpProxy, { type FastifyHttpProxyOptions } from '@fastify/http-proxy'
import type { FastifyInstance } from 'fastify'
import { API_HEADERS } from './security-headers'

const HSTS = 'strict-transport-security'

/** Everything that is not the API's is a page: it is passed to Next, which sets the headers of its pages itself. */
export async function passPagesOn(app: FastifyInstance, webOrigin: string): Promise<void> {
  await app.register(async (pages) => {
    // The proxy brings parsers of its own, which take every body as it is.
    pages.removeAllContentTypeParsers()
    await pages.register(httpProxy, proxyTo(webOrigin))
  })
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
      rewriteRequestHeaders: (request, headers) => ({
        ...headers,
        'x-request-id': (request as { id?: string }).id ?? '',
        'x-forwarded-host': request.headers.host ?? '',
      }),
      rewriteHeaders: (headers) => {
        const { 'x-powered-by': _, ...kept } = headers
        return { ...kept, [HSTS]: API_HEADERS[HSTS] }
      },
    },
  }
}
