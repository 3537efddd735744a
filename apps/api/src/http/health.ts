import * as z from 'zod/mini'
import type { Deps } from '../deps'
import { type Api, responses } from './api'
import { ProblemError } from './problem-error'

const alive = z.strictObject({ status: z.literal('pass') })

/** Whether the process runs, and whether it can do its work: the database answers and is of this build's making. */
export function registerHealth(app: Api, deps: Deps): void {
  app.get(
    '/livez',
    { schema: { response: responses({ 200: alive }) }, config: { access: { kind: 'open' }, uncounted: true } },
    async () => ({ status: 'pass' as const }),
  )
  app.get(
    '/readyz',
    { schema: { response: responses({ 200: alive }) }, config: { access: { kind: 'open' }, uncounted: true } },
    async () => {
      if (!(await isReady(deps))) throw new ProblemError({ code: 'not-ready' })
      return { status: 'pass' as const }
    },
  )
}

async function isReady(deps: Deps): Promise<boolean> {
  try {
    await deps.pools.identity.query('select 1')
    const { rows } = await deps.pools.app.query<{ name: string }>('select name from schema_migration order by name')
    return deps.migrations.every((name) => rows.some((row) => row.name === name))
  } catch {
    return false
  }
}
