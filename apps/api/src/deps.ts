import type { KeyObject } from 'node:crypto'
import type { AccessRules } from '@espalier/domain/access'
import type { FastifyBaseLogger } from 'fastify'
import type { Pools } from './db/pool'
import type { RateLimit } from './http/rate-limits'
import type { CheckPool } from './workers/check-pool'

/** What differs between a server, a laptop and a test; parsed once at the start. */
export type Settings = {
  /** Origins a browser may write from, exactly as it names them: https://club.example. */
  readonly origins: readonly string[]
  /** Where Next listens, on a loopback address; null where no pages are served (tests, the demo's making). */
  readonly webOrigin: string | null
  /** How many proxies before this process may name the visitor's address. */
  readonly trustedProxies: number
  /** What Next sends to be believed about the address of a page's visitor; null where nobody is. */
  readonly webKey: string | null
  readonly limits: {
    readonly anonymous: RateLimit
    readonly login: RateLimit
    readonly operations: RateLimit
    /** Checks of patterns that nothing is kept of: each costs a thread some time. */
    readonly checks: RateLimit
    /** Pages by address, signed in or not; one visit also asks ahead for pages behind its links. */
    readonly pages: RateLimit
    /** Built files by address: cheap to answer, and many belong to one page. */
    readonly files: RateLimit
  }
  /** How many checks of patterns are computed at once, each in a thread of its own. */
  readonly checkThreads: number
  readonly logLevel: 'fatal' | 'error' | 'warn' | 'info' | 'debug' | 'silent'
}

/** Everything a feature may reach outside itself. Time and ids come from here, so that tests and the demo choose them. */
export type Deps = {
  readonly pools: Pools
  readonly checks: CheckPool
  readonly settings: Settings
  /** Wraps the keys of children's names; it is never in the database. */
  readonly nameKey: KeyObject
  /** The one table of who may do what; an argument, so that a test can change a rule and watch. */
  readonly accessRules: AccessRules
  readonly now: () => number
  readonly newId: () => string
  /** Names of the migrations this build was made for; readiness compares them with the database. */
  readonly migrations: readonly string[]
}

export type Log = FastifyBaseLogger

/** By habit of the project: a person reads some pages a minute, a phone at the field sends a few batches, a club house shares one address. */
export const DEFAULT_LIMITS: Settings['limits'] = {
  anonymous: { requests: 60, windowSeconds: 60 },
  login: { requests: 300, windowSeconds: 60 },
  operations: { requests: 60, windowSeconds: 60 },
  // A page checks by itself. By these eight, at most seven seconds each, one login keeps at most one thread busy.
  checks: { requests: 8, windowSeconds: 60 },
  pages: { requests: 600, windowSeconds: 60 },
  files: { requests: 6000, windowSeconds: 60 },
}
