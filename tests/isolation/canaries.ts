import type { FastifyRequest } from 'fastify'
import type { Api } from '../../apps/api/src/http/api'

/** What nobody behind this login may ever be sent. */
export type CanaryWatch = {
  readonly leaks: string[]
  scanned: number
  forbid(accountId: string, canaries: readonly string[]): void
  /** Told before the routes are registered, so that it hears every answer. */
  listen(app: Api): Promise<void>
}

/** Reads every byte of every answer, header and body, for words that belong to somebody else. */
export function watchCanaries(): CanaryWatch {
  const forbidden = new Map<string, readonly string[]>()
  const watch: CanaryWatch = {
    leaks: [],
    scanned: 0,
    forbid: (accountId, canaries) => {
      forbidden.set(accountId, [...(forbidden.get(accountId) ?? []), ...canaries])
    },
    listen: async (app) => {
      app.addHook('onSend', async (request, reply, payload) => {
        const text = `${JSON.stringify(reply.getHeaders())}${typeof payload === 'string' ? payload : String(payload ?? '')}`
        scan(watch, request, text, forbidden)
        return payload
      })
    },
  }
  return watch
}

function scan(
  watch: CanaryWatch,
  request: FastifyRequest,
  text: string,
  forbidden: ReadonlyMap<string, readonly string[]>,
): void {
  watch.scanned += 1
  const all = new Set([...forbidden.values()].flat())
  const canaries = request.login === null ? [...all] : (forbidden.get(request.login.accountId) ?? [])
  for (const canary of canaries)
    if (text.includes(canary)) watch.leaks.push(`${request.method} ${request.routeOptions.url} leaked ${canary}`)
}
