import type { LedgerEntryBody } from '@espalier/contract/ledger'
import type { EntryRow } from './queries'

export function entryBodyOf(row: EntryRow): LedgerEntryBody {
  return {
    entryId: row.entry_id,
    seq: row.seq,
    kind: row.kind,
    subjectId: row.subject_id,
    at: row.at.toISOString(),
    body: row.body,
    leafHash: row.leaf_hash.toString('hex'),
  }
}

export function hexOf(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('hex')
}
