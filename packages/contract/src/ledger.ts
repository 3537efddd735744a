import * as z from 'zod/mini'
import { instantText, sha256Hex, uuid } from './quantities'

/** The record book's head: how many entries, and the root of its RFC 6962 tree. Sealing comes with its issue. */
export const ledgerHead = z.strictObject({
  size: z.int(),
  root: sha256Hex,
  sealed: z.nullable(z.strictObject({ size: z.int(), at: instantText })),
})
export type LedgerHead = z.infer<typeof ledgerHead>

export const ledgerEntry = z.strictObject({
  entryId: uuid,
  seq: z.int(),
  kind: z.string(),
  subjectId: uuid,
  at: instantText,
  /** The exact canonical text (RFC 8785) that was hashed. */
  body: z.string(),
  leafHash: sha256Hex,
})
export type LedgerEntryBody = z.infer<typeof ledgerEntry>
export const ledgerEntriesQuery = z.strictObject({
  subjectId: z.optional(uuid),
  before: z.optional(z.string().check(z.regex(/^\d{1,15}$/))),
})
/** Newest first, at most 100; `next` is the `before` of the following page. */
export const ledgerEntries = z.strictObject({ entries: z.array(ledgerEntry), next: z.nullable(z.string()) })

export const ledgerInclusion = z.strictObject({
  entry: ledgerEntry,
  /** Leaf index, counted from 0. */
  index: z.int(),
  size: z.int(),
  path: z.array(sha256Hex),
  root: sha256Hex,
})
export type LedgerInclusion = z.infer<typeof ledgerInclusion>
export const entryParams = z.strictObject({ clubId: uuid, entryId: uuid })
const treeSize = z.string().check(z.regex(/^[1-9]\d{0,15}$/, 'must be a tree size'))
export const ledgerConsistencyQuery = z.strictObject({ from: treeSize, to: treeSize })
export const ledgerConsistency = z.strictObject({
  from: z.int(),
  to: z.int(),
  fromRoot: sha256Hex,
  toRoot: sha256Hex,
  path: z.array(sha256Hex),
})
export type LedgerConsistency = z.infer<typeof ledgerConsistency>
