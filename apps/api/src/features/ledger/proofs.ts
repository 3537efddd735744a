import type { LedgerConsistency, LedgerInclusion } from '@espalier/contract/ledger'
import {
  buildProof,
  describeConsistencyProof,
  describeInclusionProof,
  joinPeaks,
  listNodeKeys,
  type ProofRecipe,
} from '@espalier/domain/ledger'
import type { ClubDb } from '../../db/with-club'
import { nodeSha256 } from '../../ledger/node-sha256'
import { entryBodyOf, hexOf } from './bodies'
import { type EntryRow, findHead, listNodes } from './queries'

/** That an entry stands in the book as its head is now. */
export async function proveInclusion(db: ClubDb, entry: EntryRow): Promise<LedgerInclusion> {
  const head = await findHead(db)
  const size = head!.size
  const path = await fetchProof(db, describeInclusionProof(entry.seq, size))
  return { entry: entryBodyOf(entry), index: entry.seq, size, path: path.map(hexOf), root: hexOf(head!.root) }
}

/** That the book of an older size is the beginning of a newer one; null where the book was never so long. */
export async function proveConsistency(db: ClubDb, from: number, to: number): Promise<LedgerConsistency | null> {
  const head = await findHead(db)
  if (from > to || to > head!.size) return null
  const path = await fetchProof(db, describeConsistencyProof(from, to))
  return {
    from,
    to,
    fromRoot: hexOf(await rootAt(db, from)),
    toRoot: to === head!.size ? hexOf(head!.root) : hexOf(await rootAt(db, to)),
    path: path.map(hexOf),
  }
}

async function fetchProof(db: ClubDb, recipe: ProofRecipe): Promise<readonly Uint8Array[]> {
  return buildProof(nodeSha256, recipe, await listNodes(db, listNodeKeys(recipe)))
}

/** The root the book had at an older size, from the complete subtrees that its leaves split into, largest first. */
async function rootAt(db: ClubDb, size: number): Promise<Uint8Array> {
  const keys: { readonly level: number; readonly index: number }[] = []
  let start = 0
  for (let level = Math.floor(Math.log2(size)); level >= 0; level -= 1) {
    const width = 2 ** level
    if (size - start < width) continue
    keys.push({ level, index: start / width })
    start += width
  }
  const nodes = await listNodes(db, keys)
  const peaks = keys.map(({ level, index }) => nodes.find((node) => node.level === level && node.index === index)!.hash)
  return joinPeaks(nodeSha256, peaks)
}
