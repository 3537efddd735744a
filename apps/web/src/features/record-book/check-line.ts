import type { LedgerConsistency, LedgerHead, LedgerInclusion } from '@espalier/contract/ledger'
import {
  bytesOfHex,
  entryTextLeafHash,
  hexOf,
  sha256,
  verifyConsistency,
  verifyInclusion,
} from '@espalier/domain/ledger'

export type ShownHead = Pick<LedgerHead, 'size' | 'root'>

export type CheckFailure = 'text' | 'path' | 'consistency' | 'other'
export type LineCheck =
  | { readonly holds: true; readonly grownTo: number | null }
  | { readonly holds: false; readonly because: CheckFailure }

/**
 * Checks one line against the head that the page shows, with nothing but SHA-256: its text gives its hash, its hash
 * and the path give the root, and where the book has grown since, the older head is a beginning of the newer one.
 */
export function checkLine(
  entryId: string,
  shown: ShownHead,
  proof: LedgerInclusion,
  consistency: LedgerConsistency | null,
): LineCheck {
  if (proof.entry.entryId !== entryId || proof.entry.seq !== proof.index || !speaksOf(proof.entry.body, entryId))
    return { holds: false, because: 'other' }
  const leafHash = entryTextLeafHash(sha256, proof.entry.body)
  if (hexOf(leafHash) !== proof.entry.leafHash) return { holds: false, because: 'text' }
  const isIncluded = verifyInclusion(sha256, {
    leafHash,
    index: proof.index,
    size: proof.size,
    root: bytesOfHex(proof.root),
    proof: proof.path.map(bytesOfHex),
  })
  if (!isIncluded) return { holds: false, because: 'path' }
  if (proof.size === shown.size)
    return proof.root === shown.root ? { holds: true, grownTo: null } : { holds: false, because: 'path' }
  return isGrowthOf(shown, proof, consistency)
    ? { holds: true, grownTo: proof.size }
    : { holds: false, because: 'consistency' }
}

function isGrowthOf(shown: ShownHead, proof: LedgerInclusion, consistency: LedgerConsistency | null): boolean {
  if (consistency === null || consistency.from !== shown.size || consistency.to !== proof.size) return false
  return verifyConsistency(sha256, {
    oldSize: shown.size,
    oldRoot: bytesOfHex(shown.root),
    newSize: proof.size,
    newRoot: bytesOfHex(proof.root),
    proof: consistency.path.map(bytesOfHex),
  })
}

/** The hashed text itself must name the entry: a true path to another line proves nothing about this one. */
function speaksOf(text: string, entryId: string): boolean {
  try {
    const line: unknown = JSON.parse(text)
    return typeof line === 'object' && line !== null && 'entry' in line && line.entry === entryId
  } catch {
    return false
  }
}

/** On which side each element of an inclusion path is joined (RFC 9162, section 2.1.3.2). */
export function sidesOfPath(index: number, size: number, length: number): readonly ('left' | 'right')[] {
  const sides: ('left' | 'right')[] = []
  let node = index
  let last = size - 1
  while (sides.length < length && last > 0) {
    if (node % 2 === 1 || node === last) {
      sides.push('left')
      while (node % 2 === 0 && node !== 0) {
        node = Math.floor(node / 2)
        last = Math.floor(last / 2)
      }
    } else {
      sides.push('right')
    }
    node = Math.floor(node / 2)
    last = Math.floor(last / 2)
  }
  return sides
}
