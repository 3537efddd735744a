import { buildApp } from '../../apps/api/src/app'
import type { Deps } from '../../apps/api/src/deps'
import type { Api } from '../../apps/api/src/http/api'
import type { RouteAccess } from '../../apps/api/src/http/request-state'

export type LiveRoute = {
  readonly method: string
  readonly url: string
  readonly access: RouteAccess | null
  readonly hasResponseSchema: boolean
  readonly command: boolean
}

export type LiveApi = { readonly app: Api; readonly routes: readonly LiveRoute[] }

/** The server with every route it really has, collected while it registers them. */
export async function buildLiveApi(deps: Deps, before: (app: Api) => Promise<void> = async () => {}): Promise<LiveApi> {
  const routes: LiveRoute[] = []
  const app = await buildApp(deps, async (building) => {
    building.addHook('onRoute', (route) => {
      for (const method of [route.method].flat()) {
        routes.push({
          method,
          url: route.url,
          access: route.config?.access ?? null,
          hasResponseSchema: (route.schema as { response?: unknown } | undefined)?.response !== undefined,
          command: route.config?.command === true,
        })
      }
    })
    await before(building)
  })
  return { app, routes }
}

/** Routes that say nothing of who may ask: each is a hole until somebody has thought about it. */
export function listUnguarded(routes: readonly LiveRoute[]): readonly string[] {
  return routes.filter(({ access }) => access === null).map(({ method, url }) => `${method} ${url}`)
}
