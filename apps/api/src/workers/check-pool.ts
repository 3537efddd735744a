import { createRequire } from 'node:module'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { ErrorRunsRefusal } from '@espalier/domain/check'
import { type Result, refuse } from '@espalier/domain/quantities'
import { Piscina } from 'piscina'
import type { CheckJob, CheckTask } from './check-job'

/** Why a check came to no end: no thread in time, over its own time or memory, or nobody waits for it any more. */
export type CheckStop = { readonly code: 'busy' | 'too-long' | 'too-large' | 'hung-up' }

/** Computes checks away from the thread that answers requests. */
export type CheckPool = {
  /** The report as JSON text. Once `hungUp` says so the work is ended, wherever it is. */
  readonly run: (task: CheckTask, hungUp: AbortSignal) => Promise<Result<string, ErrorRunsRefusal | CheckStop>>
  /** Ends its threads; what they still work on is lost. */
  readonly close: () => Promise<void>
}

export type CheckPoolLimits = {
  readonly threads: number
  /** More checks than this do not wait for a thread. */
  readonly waitingMax: number
  readonly waitMilliseconds: number
  readonly runMilliseconds: number
  /** Of one thread. */
  readonly memoryMegabytes: number
  /** A thread that is asked for nothing ends after this time. */
  readonly idleMilliseconds: number
}

/**
 * By habit of the project. Waiting and running together end before a server that was asked to stop gives up (10 s). A hundred
 * thousand runs of a usual pattern take a second or two of a thread; what takes seven asks for too much.
 */
export const CHECK_POOL_LIMITS = {
  waitingMax: 8,
  waitMilliseconds: 2_000,
  runMilliseconds: 7_000,
  memoryMegabytes: 256,
  idleMilliseconds: 60_000,
} as const satisfies Omit<CheckPoolLimits, 'threads'>

/** No thread is started before the first check is asked. */
export function makeCheckPool(limits: CheckPoolLimits): CheckPool {
  const jobs = new Map<number, () => void>()
  let pool: Piscina<CheckJob, Result<string, ErrorRunsRefusal>> | null = null
  let lastId = 0
  return {
    run: async (task, hungUp) => {
      if (jobs.size >= limits.threads + limits.waitingMax) return refuse({ code: 'busy' })
      pool ??= openPool(limits, (jobId) => jobs.get(jobId)?.())
      lastId += 1
      const jobId = lastId
      const stop = new AbortController()
      const stopAfter = (milliseconds: number, code: CheckStop['code']) =>
        setTimeout(() => stop.abort(code), milliseconds)
      const hangUp = () => stop.abort('hung-up')
      if (hungUp.aborted) hangUp()
      hungUp.addEventListener('abort', hangUp)
      let timer = stopAfter(limits.waitMilliseconds, 'busy')
      jobs.set(jobId, () => {
        clearTimeout(timer)
        timer = stopAfter(limits.runMilliseconds, 'too-long')
      })
      try {
        return await pool.run({ ...task, jobId }, { signal: stop.signal })
      } catch (error) {
        if (stop.signal.aborted) return refuse({ code: stop.signal.reason as CheckStop['code'] })
        if ((error as NodeJS.ErrnoException).code === 'ERR_WORKER_OUT_OF_MEMORY') return refuse({ code: 'too-large' })
        throw error
      } finally {
        clearTimeout(timer)
        hungUp.removeEventListener('abort', hangUp)
        jobs.delete(jobId)
      }
    },
    close: async () => {
      await pool?.destroy()
      pool = null
    },
  }
}

function openPool(limits: CheckPoolLimits, onBegun: (jobId: number) => void) {
  const pool = new Piscina<CheckJob, Result<string, ErrorRunsRefusal>>({
    ...findWorker(),
    name: 'writeReport',
    // Whoever waits is served by a thread that ends its work; without one kept, an ended check would leave them waiting.
    minThreads: 1,
    maxThreads: limits.threads,
    maxQueue: limits.waitingMax + limits.threads,
    idleTimeout: limits.idleMilliseconds,
    resourceLimits: { maxOldGenerationSizeMb: limits.memoryMegabytes },
    // A thread needs no secret of the server's.
    env: {},
    recordTiming: false,
  })
  pool.on('message', onBegun)
  return pool
}

/** Beside this file: as it was written where that is TypeScript (tests, development), else as it was built. */
function findWorker(): { readonly filename: string; readonly execArgv?: string[] } {
  const here = import.meta.url
  if (!here.endsWith('.ts')) return { filename: fileURLToPath(new URL('./check-worker.js', here)) }
  const loader = pathToFileURL(createRequire(here).resolve('tsx')).href
  return { filename: fileURLToPath(new URL('./check-worker.ts', here)), execArgv: ['--import', loader] }
}
