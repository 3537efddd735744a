import { assert } from '../quantities'
import { joinPeaks, type NodeKey, type TreeNode } from './merkle-tree'
import type { Sha256 } from './sha256'

/**
 * How a proof is made from stored nodes: one element per list, from the leaf upwards. An element is a complete subtree,
 * or the ragged right edge, whose complete parts stand side by side, largest first. One query fetches all of them.
 */
export type ProofRecipe = readonly (readonly NodeKey[])[]

/** Leaves from `start` up to, not including, `end`. */
type LeafRange = { readonly start: number; readonly end: number }

/**
 * The path from one leaf to the root of the tree of the first `size` leaves, of any size there has been.
 * Source: RFC 6962, section 2.1.1 (PATH).
 */
export function describeInclusionProof(index: number, size: number): ProofRecipe {
  assert(Number.isSafeInteger(size) && Number.isSafeInteger(index), 'index and size are whole numbers')
  assert(index >= 0 && index < size, 'the leaf must stand in the tree')
  const siblings: LeafRange[] = []
  let range: LeafRange = { start: 0, end: size }
  while (range.end - range.start > 1) {
    const [left, right] = split(range)
    siblings.unshift(index < left.end ? right : left)
    range = index < left.end ? left : right
  }
  return siblings.map(completeParts)
}

/**
 * That the tree of `oldSize` leaves is the beginning of the tree of `newSize`. Equal sizes need an empty proof.
 * Source: RFC 6962, section 2.1.2 (PROOF, SUBPROOF).
 */
export function describeConsistencyProof(oldSize: number, newSize: number): ProofRecipe {
  assert(Number.isSafeInteger(oldSize) && Number.isSafeInteger(newSize), 'sizes are whole numbers')
  assert(oldSize > 0 && oldSize <= newSize, 'the old tree holds a leaf and is not longer than the new one')
  const elements: LeafRange[] = []
  let range: LeafRange = { start: 0, end: newSize }
  while (range.end !== oldSize) {
    const [left, right] = split(range)
    elements.unshift(oldSize <= left.end ? right : left)
    range = oldSize <= left.end ? left : right
  }
  // The verifier holds the old root already: where the old tree is itself one complete subtree it is left out.
  if (range.start > 0) elements.unshift(range)
  return elements.map(completeParts)
}

/** The nodes to fetch. Level 0 stands with the entries, higher levels in the node table. */
export function listNodeKeys(recipe: ProofRecipe): readonly NodeKey[] {
  return recipe.flat()
}

/** Makes the proof from the fetched nodes, in whatever order they came. */
export function buildProof(sha256: Sha256, recipe: ProofRecipe, nodes: readonly TreeNode[]): readonly Uint8Array[] {
  const hashes = new Map(nodes.map((node) => [nodeName(node), node.hash]))
  return recipe.map((parts) =>
    joinPeaks(
      sha256,
      parts.map((key) => {
        const hash = hashes.get(nodeName(key))
        assert(hash, `the record book lacks node ${nodeName(key)}`)
        return hash
      }),
    ),
  )
}

function nodeName({ level, index }: NodeKey): string {
  return `${level}/${index}`
}

/** RFC 6962 splits n leaves at the largest power of two below n. */
function split({ start, end }: LeafRange): readonly [LeafRange, LeafRange] {
  let width = 1
  while (width * 2 < end - start) width *= 2
  return [
    { start, end: start + width },
    { start: start + width, end },
  ]
}

/** A range that RFC 6962 made begins at a multiple of its largest part, so its parts are the one bits of its width. */
function completeParts({ start, end }: LeafRange): readonly NodeKey[] {
  const parts: NodeKey[] = []
  let from = start
  while (from < end) {
    let level = 0
    let width = 1
    while (width * 2 <= end - from) {
      width *= 2
      level += 1
    }
    parts.push({ level, index: from / width })
    from += width
  }
  return parts
}
