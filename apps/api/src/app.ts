import Fastify, { LogController } from 'fastify'
import { serializerCompiler, validatorCompiler, type ZodTypeProvider } from 'fastify-type-provider-zod'
import * as z from 'zod/mini'
import type { Deps } from './deps'
import { registerFeatures } from './features'
import type { Api } from './http/api'
import { makeClientErrorHandler } from './http/client-error'
import { failureLine } from './http/describe-failure'
import { makeRequestGuard } from './http/guards'
import { registerHealth } from './http/health'
import { readJsonBodies } from './http/json-body'
import { registerOpenApi } from './http/openapi'
import { passPagesOn } from './http/pages'
import { answerError, sendProblem } from './http/problems'
import { logRequest } from './http/request-log'
import './http/request-state'
import { setApiHeaders } from './http/security-headers'

const BODY_BYTES_MAX = 64 * 1024

/** How long a visitor may take; by habit of the project, far more than a phone at the edge of its signal needs. */
export type SocketLimits = {
  readonly headersMilliseconds: number
  /** Headers and body together. */
  readonly requestMilliseconds: number
  /** Without a byte in either direction. */
  readonly idleMilliseconds: number
  /** How often it is looked who is over these limits. */
  readonly checkMilliseconds: number
}

const SOCKET_LIMITS: SocketLimits = {
  headersMilliseconds: 10_000,
  requestMilliseconds: 15_000,
  idleMilliseconds: 30_000,
  checkMilliseconds: 1_000,
}

/** The whole server, wired by hand in the order in which a request meets its parts; listening is somebody else's. */
export async function buildApp(
  deps: Deps,
  beforeRoutes: (app: Api) => Promise<void> = async () => {},
  limits: SocketLimits = SOCKET_LIMITS,
): Promise<Api> {
  z.config(z.locales.en())
  const app = Fastify({
    // The framework and the proxy log errors of their own, under this name.
    logger: { level: deps.settings.logLevel, base: null, serializers: { err: failureLine } },
    logController: new LogController({ disableRequestLogging: true, requestIdLogLabel: 'requestId' }),
    // Whatever id a visitor sends is not ours.
    requestIdHeader: false,
    genReqId: deps.newId,
    trustProxy: (_address, hop) => hop < deps.settings.trustedProxies,
    bodyLimit: BODY_BYTES_MAX,
    requestTimeout: limits.requestMilliseconds,
    connectionTimeout: limits.idleMilliseconds,
    // Node looks only every half minute unless it is told to look more often.
    http: { headersTimeout: limits.headersMilliseconds, connectionsCheckingInterval: limits.checkMilliseconds },
    exposeHeadRoutes: false,
    // What still arrives while the server stops gets its real answer; the framework's own 503 is no problem of ours.
    return503OnClosing: false,
    onProtoPoisoning: 'error',
    onConstructorPoisoning: 'error',
    clientErrorHandler: makeClientErrorHandler(deps.newId),
    frameworkErrors: (error, request, reply) => {
      setApiHeaders(reply)
      answerError(error, request, reply)
    },
  }).withTypeProvider<ZodTypeProvider>()

  app.setValidatorCompiler(validatorCompiler)
  app.setSerializerCompiler(serializerCompiler)
  app.decorateRequest('login', null)
  app.decorateRequest('problemCode', null)
  app.addHook('onRequest', async (request, reply) => {
    if (request.routeOptions.config.proxied !== true) setApiHeaders(reply)
  })
  app.addHook('onRequest', makeRequestGuard(deps))
  app.addHook('onResponse', logRequest)
  app.setErrorHandler(answerError)
  app.setNotFoundHandler((request, reply) => sendProblem(request, reply, { code: 'not-found' }))
  readJsonBodies(app)

  await beforeRoutes(app)
  registerOpenApi(app)
  registerHealth(app, deps)
  await app.register(async (features: Api) => registerFeatures(features, deps))
  if (deps.settings.webOrigin !== null) {
    // The API's own addresses never reach the pages, known or not.
    app.all('/v1/*', { schema: { hide: true }, config: { access: { kind: 'open' } } }, (_request, reply) =>
      reply.callNotFound(),
    )
    await passPagesOn(app, deps.settings.webOrigin)
  }
  await app.ready()
  return app
}
