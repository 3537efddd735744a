import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { InvariantError } from '../quantities'
import { hexOf, utf8Bytes } from './bytes'
import { growTree } from './fixtures/grown-tree'
import { appendLeaf, emptyHead, joinPeaks, leafHash, nodeHash } from './merkle-tree'
import type { Sha256 } from './sha256'

const nodeSha256: Sha256 = (bytes) => createHash('sha256').update(bytes).digest()

function numberedLeaves(count: number): Uint8Array[] {
  return Array.from({ length: count }, (_, index) => leafHash(nodeSha256, utf8Bytes(`leaf-${index}`)))
}

/** RFC 6962, section 2.1, as it is written there, with hashes of its own making. */
function recursiveRoot(leaves: readonly Uint8Array[]): Uint8Array {
  if (leaves.length === 0) return createHash('sha256').digest()
  if (leaves.length === 1) return leaves[0]!
  let width = 1
  while (width * 2 < leaves.length) width *= 2
  return createHash('sha256')
    .update(Uint8Array.of(1))
    .update(recursiveRoot(leaves.slice(0, width)))
    .update(recursiveRoot(leaves.slice(width)))
    .digest()
}

const leaves = numberedLeaves(300)
const tree = growTree(nodeSha256, leaves)

test('the incremental root equals the recursive definition at every size to 300', () => {
  for (let size = 0; size <= 300; size++) {
    expect(hexOf(tree.heads[size]!.root)).toBe(hexOf(recursiveRoot(leaves.slice(0, size))))
  }
})

// Computed before this code, by an independent Python implementation of RFC 6962.
test('a thousand numbered leaves have the root that an independent program computed', () => {
  const { heads } = growTree(nodeSha256, numberedLeaves(1000))
  expect(hexOf(heads[1000]!.root)).toBe('84453b515db221e015241f91778d541a91e27472a3cbbd4922b023b180456359')
})

test('each append hands out exactly the subtrees that its leaf completed', () => {
  const stored = new Map<string, string>()
  for (const { level, index, hash } of tree.nodes) {
    expect(stored.has(`${level}/${index}`)).toBe(false)
    stored.set(`${level}/${index}`, hexOf(hash))
  }
  let expected = 0
  for (let level = 0, width = 1; width <= 300; level++, width *= 2) {
    for (let index = 0; (index + 1) * width <= 300; index++, expected++) {
      const covered = leaves.slice(index * width, (index + 1) * width)
      expect(stored.get(`${level}/${index}`)).toBe(hexOf(recursiveRoot(covered)))
    }
  }
  expect(stored.size).toBe(expected)
})

test('an append completes at most log2 of the size subtrees, and fewer than one on average', () => {
  let completed = 0
  for (let size = 1; size <= 300; size++) {
    const { nodes } = appendLeaf(nodeSha256, tree.heads[size - 1]!, leaves[size - 1]!)
    expect(nodes.length).toBeLessThanOrEqual(Math.log2(size))
    completed += nodes.length
  }
  expect(completed).toBeLessThan(300)
})

test('an append needs the head only, whatever order of sizes it is tried in', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 299 }), (size) => {
      const { head } = appendLeaf(nodeSha256, tree.heads[size]!, leaves[size]!)
      expect(hexOf(head.root)).toBe(hexOf(tree.heads[size + 1]!.root))
      expect(head.peaks.map(hexOf)).toEqual(tree.heads[size + 1]!.peaks.map(hexOf))
    }),
  )
})

test('an append beyond 2^32 leaves counts exactly', () => {
  const size = 2 ** 40 + 3
  const peaks = [0, 1, 2].map((peak) => leaves[peak]!)
  const { head, nodes } = appendLeaf(nodeSha256, { size, peaks }, leaves[3]!)
  expect(head.size).toBe(2 ** 40 + 4)
  expect(nodes.map(({ level, index }) => [level, index])).toEqual([
    [1, 2 ** 39 + 1],
    [2, 2 ** 38],
  ])
  expect(head.peaks).toHaveLength(2)
})

describe('a head that cannot be is a bug and is refused', () => {
  const leaf = leaves[0]!
  test.each([
    ['too few peaks', { size: 3, peaks: [leaf] }],
    ['too many peaks', { size: 2, peaks: [leaf, leaf] }],
    ['a negative size', { size: -1, peaks: [] }],
    ['a fractional size', { size: 0.5, peaks: [] }],
    ['a short peak', { size: 1, peaks: [leaf.slice(1)] }],
  ])('%s', (_, head) => {
    expect(() => appendLeaf(nodeSha256, head, leaf)).toThrow(InvariantError)
  })
  test('a short leaf hash', () => {
    expect(() => appendLeaf(nodeSha256, emptyHead(nodeSha256), leaf.slice(1))).toThrow(InvariantError)
  })
  test('no peaks to join', () => {
    expect(() => joinPeaks(nodeSha256, [])).toThrow(InvariantError)
  })
})

/** The forger's attempt: to show the two children of a root as the text of a single entry. */
function nodePassesAsLeaf(sha256: Sha256): boolean {
  const [left, right] = [utf8Bytes('left'), utf8Bytes('right')].map((leaf) => leafHash(sha256, leaf))
  const forgedText = Uint8Array.from([...left!, ...right!])
  return hexOf(leafHash(sha256, forgedText)) === hexOf(nodeHash(sha256, left!, right!))
}

test('a node never passes as a leaf', () => {
  expect(nodePassesAsLeaf(nodeSha256)).toBe(false)
})

test('without the prefixes a node would pass as a leaf', () => {
  expect(nodePassesAsLeaf((bytes) => nodeSha256(bytes.subarray(1)))).toBe(true)
})
