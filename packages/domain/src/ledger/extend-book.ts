import { utf8Bytes } from './bytes'
import { entryText, type LedgerEntry } from './entry'
import { appendLeaf, leafHash, type RootedHead, type TreeHead, type TreeNode } from './merkle-tree'
import type { Sha256 } from './sha256'

/** An entry before it has a place: its number comes from the book's head and from nowhere else. */
export type NewEntry = Omit<LedgerEntry, 'v' | 'seq'>

export type BookExtension = {
  readonly entry: LedgerEntry
  /** What the database stores as the entry's body, byte for byte. */
  readonly text: string
  readonly leafHash: Uint8Array
  readonly head: RootedHead
  /** Node rows to insert; all of them have a level above 0. */
  readonly nodes: readonly TreeNode[]
}

/** Everything that one append writes, decided from the locked head alone. */
export function extendBook(sha256: Sha256, head: TreeHead, newEntry: NewEntry): BookExtension {
  const entry: LedgerEntry = { ...newEntry, v: 1, seq: head.size }
  const text = entryText(entry)
  const leaf = leafHash(sha256, utf8Bytes(text))
  return { entry, text, leafHash: leaf, ...appendLeaf(sha256, head, leaf) }
}
