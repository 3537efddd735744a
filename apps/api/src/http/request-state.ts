import type { ProblemCode } from '@espalier/contract/problems'
import type { Permission } from '@espalier/domain/access'
import type { Login } from './logins'

/** What every route says about itself; a test refuses a route that says nothing. */
export type RouteAccess =
  /** Anybody may ask: health, the contract, the press that signs in. */
  | { readonly kind: 'open' }
  /** A signed-in browser, about its own account. */
  | { readonly kind: 'login' }
  /** A member of the club in the path, by the permission named. */
  | { readonly kind: 'member'; readonly permission: Permission }

declare module 'fastify' {
  interface FastifyContextConfig {
    access?: RouteAccess
    /** Pages come from Next with headers of their own. */
    proxied?: boolean
    /** A write with a record-book entry needs an Idempotency-Key. */
    command?: boolean
    /** Counted by a limit of its own besides that of requests. */
    alsoCounted?: 'operations' | 'checks'
    /** Health is asked by machines, often. */
    uncounted?: boolean
  }
  interface FastifyRequest {
    login: Login | null
    problemCode: ProblemCode | null
  }
}
