import * as z from 'zod/mini'
import { uuid } from './quantities'

/** A UUID, bare or in quotes as a Structured Field string. */
const idempotencyKey = z
  .string()
  .check(z.regex(/^("?)[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}\1$/, 'must be a UUID'))

/** Every write carries a key made by the client; sending it again changes nothing. */
export const commandHeaders = z.looseObject({ 'idempotency-key': idempotencyKey })
/** A write to something versioned also says which version it was made from: a strong entity tag like "5". */
export const editHeaders = z.looseObject({
  'idempotency-key': idempotencyKey,
  'if-match': z.optional(z.string().check(z.maxLength(40))),
})

/** All that a command answers, so that a stored reply never holds a name or a secret. */
export const commandResult = z.strictObject({
  id: uuid,
  version: z.nullable(z.int()),
  /** The record book's entry of this effect. */
  entry: uuid,
})
export type CommandResult = z.infer<typeof commandResult>

export const clubParams = z.strictObject({ clubId: uuid })
export const teamParams = z.strictObject({ clubId: uuid, teamId: uuid })

/** A strong entity tag for a version number. */
export function entityTag(version: number): string {
  return `"${version}"`
}
