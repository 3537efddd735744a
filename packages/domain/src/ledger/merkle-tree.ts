import { assert } from '../quantities'
import { HASH_LENGTH_BYTES, type Sha256 } from './sha256'

/**
 * Where a complete subtree stands: it covers the leaves from `index * 2^level` on, `2^level` of them. Leaves are level 0
 * and kept with their entries; higher nodes are stored once, when their last leaf arrives, and never change.
 */
export type NodeKey = { readonly level: number; readonly index: number }
export type TreeNode = NodeKey & { readonly hash: Uint8Array }

/** All that an append needs: the leaf count, and the roots of the complete subtrees it splits into, largest first. */
export type TreeHead = { readonly size: number; readonly peaks: readonly Uint8Array[] }
export type RootedHead = TreeHead & { readonly root: Uint8Array }

export type Append = {
  readonly head: RootedHead
  /** Subtrees that this leaf completed, lowest first: at most log2 of the size, one on average. */
  readonly nodes: readonly TreeNode[]
}

const LEAF_PREFIX = 0x00
const NODE_PREFIX = 0x01

/** Source: RFC 6962, section 2.1: the prefix keeps a leaf from ever passing as a node. */
export function leafHash(sha256: Sha256, leaf: Uint8Array): Uint8Array {
  const input = new Uint8Array(1 + leaf.length)
  input[0] = LEAF_PREFIX
  input.set(leaf, 1)
  return sha256(input)
}

/** Source: RFC 6962, section 2.1. */
export function nodeHash(sha256: Sha256, left: Uint8Array, right: Uint8Array): Uint8Array {
  assert(left.length === HASH_LENGTH_BYTES && right.length === HASH_LENGTH_BYTES, 'a node joins two hashes of 32 bytes')
  const input = new Uint8Array(1 + 2 * HASH_LENGTH_BYTES)
  input[0] = NODE_PREFIX
  input.set(left, 1)
  input.set(right, 1 + HASH_LENGTH_BYTES)
  return sha256(input)
}

/** The head of a club's book before its first entry. */
export function emptyHead(sha256: Sha256): RootedHead {
  return { size: 0, peaks: [], root: sha256(new Uint8Array(0)) }
}

/** Joins subtree roots that stand side by side, largest first, into the root over all of them. */
export function joinPeaks(sha256: Sha256, peaks: readonly Uint8Array[]): Uint8Array {
  assert(peaks.length > 0, 'there is no subtree to join')
  return peaks.reduceRight((right, left) => nodeHash(sha256, left, right))
}

/** Adds one leaf, given by its hash. Costs one hash per completed subtree and one per remaining peak. */
export function appendLeaf(sha256: Sha256, head: TreeHead, leaf: Uint8Array): Append {
  assertHead(head)
  assert(leaf.length === HASH_LENGTH_BYTES, 'a leaf hash has 32 bytes')
  const peaks = [...head.peaks]
  const nodes: TreeNode[] = []
  let completed = leaf
  let index = head.size
  // Each trailing one bit of the size is a left subtree that waited for this leaf.
  for (let level = 1; index % 2 === 1; level++) {
    const left = peaks.pop()
    assert(left, 'the head has too few peaks')
    completed = nodeHash(sha256, left, completed)
    index = Math.floor(index / 2)
    nodes.push({ level, index, hash: completed })
  }
  peaks.push(completed)
  return { head: { size: head.size + 1, peaks, root: joinPeaks(sha256, peaks) }, nodes }
}

function assertHead(head: TreeHead): void {
  assert(Number.isSafeInteger(head.size) && head.size >= 0, 'a tree size is a whole number, not negative')
  assert(head.peaks.length === countOnes(head.size), 'a head has one peak for each one bit of its size')
  assert(
    head.peaks.every((peak) => peak.length === HASH_LENGTH_BYTES),
    'a peak has 32 bytes',
  )
}

// Sizes pass 32 bits here, so halving is arithmetic and not a shift.
function countOnes(size: number): number {
  let ones = 0
  for (let rest = size; rest > 0; rest = Math.floor(rest / 2)) ones += rest % 2
  return ones
}
