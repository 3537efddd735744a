import { describe, expect, test } from 'vitest'
import { bytesOfHex, hexOf } from './bytes'
import { growTree } from './fixtures/grown-tree'
import source from './fixtures/merkle-eight-leaves.json'
import { emptyHead, leafHash, type RootedHead } from './merkle-tree'
import { buildProof, describeConsistencyProof, describeInclusionProof } from './proofs'
import { sha256 } from './sha256'
import { verifyConsistency, verifyInclusion } from './verify-proof'

// Source: RFC 6962, Certificate Transparency (June 2013), section 2.1; leaves, hashes and proofs as the fixture says. Exact.

const hash = (place: number): string => source.hashes[place]!
const hashBytes = (place: number): Uint8Array => bytesOfHex(hash(place))

type PublishedProof = readonly [number, number, readonly number[]]
const inclusionProofs = source.inclusion as unknown as readonly PublishedProof[]
const consistencyProofs = source.consistency as unknown as readonly PublishedProof[]

const leaves = source.leaves.map(bytesOfHex)
const { leafHashes, heads, nodes } = growTree(
  sha256,
  leaves.map((leaf) => leafHash(sha256, leaf)),
)
const head = (size: number): RootedHead => heads[size]!

test('the eight reference leaves have the leaf hashes published for RFC 6962', () => {
  expect(leafHashes.map(hexOf)).toEqual(source.leafHashes.map(hash))
})

test('a book without an entry has the root that RFC 6962 gives to the empty tree', () => {
  expect(hexOf(emptyHead(sha256).root)).toBe(hash(source.rootsBySize[0]!))
})

describe('a tree grown leaf by leaf has the root published for RFC 6962', () => {
  test.each(source.rootsBySize.map((root, size) => [size, root] as const))('at %i leaves', (size, root) => {
    expect(hexOf(head(size).root)).toBe(hash(root))
  })
})

describe('an inclusion proof is the one of RFC 6962, section 2.1.1, and verifies', () => {
  test.each(inclusionProofs)('leaf %i of %i', (index, size, published) => {
    const proof = buildProof(sha256, describeInclusionProof(index, size), nodes)
    expect(proof.map(hexOf)).toEqual(published.map(hash))
    const claim = { leafHash: leafHashes[index]!, index, size, root: hashBytes(source.rootsBySize[size]!) }
    expect(verifyInclusion(sha256, { ...claim, proof: published.map(hashBytes) })).toBe(true)
  })
})

describe('a consistency proof is the one of RFC 6962, section 2.1.2, and verifies', () => {
  test.each(consistencyProofs)('%i to %i leaves', (oldSize, newSize, published) => {
    const proof = buildProof(sha256, describeConsistencyProof(oldSize, newSize), nodes)
    expect(proof.map(hexOf)).toEqual(published.map(hash))
    const [oldRoot, newRoot] = [oldSize, newSize].map((size) => hashBytes(source.rootsBySize[size]!))
    const claim = { oldSize, oldRoot: oldRoot!, newSize, newRoot: newRoot! }
    expect(verifyConsistency(sha256, { ...claim, proof: published.map(hashBytes) })).toBe(true)
  })
})

test('the fixture holds every proof there is up to eight leaves', () => {
  expect(inclusionProofs).toHaveLength(36)
  expect(consistencyProofs).toHaveLength(36)
})

test('with a hash function that ignores the node prefix, the published roots do not come out', () => {
  const { heads: wrong } = growTree((bytes) => sha256(bytes[0] === 0x01 ? bytes.subarray(1) : bytes), leafHashes)
  for (const size of [2, 3, 4, 5, 6, 7, 8]) {
    expect(hexOf(wrong[size]!.root)).not.toBe(hash(source.rootsBySize[size]!))
  }
})
