import type { EntryKind } from '@espalier/domain/ledger'
import { entryKinds } from '@espalier/domain/ledger'
import { ledgerMessage } from '../../messages/ledger'

/** What happened, in two or three words; a kind that this page does not know yet is shown as it is written. */
export function entryWords(kind: string): string {
  return isKnown(kind) ? ledgerMessage(kind) : kind
}

function isKnown(kind: string): kind is EntryKind {
  return entryKinds.some((known) => known === kind)
}
