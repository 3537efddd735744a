import { Prisma } from './generated/client'

/** The connection was lost while COMMIT was under way: the effect may stand or not. Only a repeat with the same key tells. */
export class OutcomeUnknownError extends Error {
  override readonly name = 'OutcomeUnknownError'
}

/** The SQLSTATE behind an error of pg or of Prisma; null where the error is of another kind. */
export function sqlStateOf(error: unknown): string | null {
  if (error instanceof Prisma.PrismaClientKnownRequestError) return driverCauseOf(error)?.originalCode ?? null
  const code = (error as { code?: unknown } | null)?.code
  return typeof code === 'string' && /^[0-9A-Z]{5}$/.test(code) ? code : null
}

/** The constraint that an error of pg or of Prisma names: which uniqueness or reference was hurt. */
export function constraintOf(error: unknown): string | null {
  if (error instanceof Prisma.PrismaClientKnownRequestError) return driverCauseOf(error)?.constraint?.index ?? null
  const constraint = (error as { constraint?: unknown } | null)?.constraint
  return typeof constraint === 'string' ? constraint : null
}

/** True where the database could not be reached, went away, or is full: the request may be sent again later. */
export function isUnavailable(error: unknown): boolean {
  const state = sqlStateOf(error)
  if (state !== null) return /^(08|53|57P)/.test(state)
  const { code, message } = (error ?? {}) as { code?: unknown; message?: unknown }
  return (typeof code === 'string' && SOCKET_CODES.has(code)) || (typeof message === 'string' && LOST.test(message))
}

/** True where somebody else held a lock for longer than this role waits. */
export function isLockTimeout(error: unknown): boolean {
  return sqlStateOf(error) === '55P03'
}

/** True for a serialization failure or a deadlock: the same work may succeed at once when repeated. */
export function isRepeatable(error: unknown): boolean {
  const state = sqlStateOf(error)
  return state === '40001' || state === '40P01'
}

const SOCKET_CODES: ReadonlySet<string> = new Set([
  'ECONNREFUSED',
  'ECONNRESET',
  'EPIPE',
  'ETIMEDOUT',
  'ENOTFOUND',
  'EHOSTUNREACH',
])

// The words of pg where it gives no code.
const LOST = /Connection terminated|timeout exceeded when trying to connect|Query read timeout|Client has encountered/

type DriverCause = { readonly originalCode?: string; readonly constraint?: { readonly index?: string } }

function driverCauseOf(error: Prisma.PrismaClientKnownRequestError): DriverCause | null {
  const adapterError = error.meta?.driverAdapterError as { cause?: DriverCause } | undefined
  return adapterError?.cause ?? null
}
