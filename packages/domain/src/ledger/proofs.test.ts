import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { InvariantError } from '../quantities'
import { utf8Bytes } from './bytes'
import { growTree } from './fixtures/grown-tree'
import { leafHash, nodeHash } from './merkle-tree'
import { buildProof, describeConsistencyProof, describeInclusionProof, listNodeKeys, type ProofRecipe } from './proofs'
import type { Sha256 } from './sha256'
import {
  type ConsistencyClaim,
  followInclusionPath,
  type InclusionClaim,
  verifyConsistency,
  verifyInclusion,
} from './verify-proof'

const sha256: Sha256 = (bytes) => createHash('sha256').update(bytes).digest()
const SIZE_MAX = 300

const tree = growTree(
  sha256,
  Array.from({ length: SIZE_MAX }, (_, index) => leafHash(sha256, utf8Bytes(`leaf-${index}`))),
)
const nodesByName = new Map(tree.nodes.map((node) => [`${node.level}/${node.index}`, node]))

/** Fetches what the recipe asks for, and nothing else, from the nodes of the longest tree. */
function proofOf(recipe: ProofRecipe): readonly Uint8Array[] {
  const fetched = listNodeKeys(recipe).flatMap(({ level, index }) => nodesByName.get(`${level}/${index}`) ?? [])
  return buildProof(sha256, recipe, fetched.reverse())
}

function inclusionClaim(index: number, size: number): InclusionClaim {
  const proof = proofOf(describeInclusionProof(index, size))
  return { leafHash: tree.leafHashes[index]!, index, size, root: tree.heads[size]!.root, proof }
}

function consistencyClaim(oldSize: number, newSize: number): ConsistencyClaim {
  const [oldRoot, newRoot] = [tree.heads[oldSize]!.root, tree.heads[newSize]!.root]
  return { oldSize, oldRoot, newSize, newRoot, proof: proofOf(describeConsistencyProof(oldSize, newSize)) }
}

const anySize = fc.integer({ min: 1, max: SIZE_MAX })
const anyLeaf = anySize.chain((size) => fc.record({ size: fc.constant(size), index: fc.nat(size - 1) }))
const anyTwoSizes = anySize.chain((newSize) =>
  fc.record({ newSize: fc.constant(newSize), oldSize: fc.integer({ min: 1, max: newSize }) }),
)

test('every leaf of every size proves its place, from the nodes of any longer tree', () => {
  fc.assert(
    fc.property(anySize, (size) => {
      for (let index = 0; index < size; index++) {
        if (!verifyInclusion(sha256, inclusionClaim(index, size))) return false
      }
      return true
    }),
    { numRuns: 25, examples: [[1], [2], [255], [256], [257], [SIZE_MAX]] },
  )
})

test('every old size proves that it is the beginning of every longer tree', () => {
  fc.assert(
    fc.property(anySize, (newSize) => {
      for (let oldSize = 1; oldSize <= newSize; oldSize++) {
        if (!verifyConsistency(sha256, consistencyClaim(oldSize, newSize))) return false
      }
      return true
    }),
    { numRuns: 25, examples: [[1], [2], [255], [256], [257], [SIZE_MAX]] },
  )
})

describe('a proof asks for at most 2 · log2 of the size nodes', () => {
  const big = fc.integer({ min: 2, max: 2 ** 40 })
  test('an inclusion proof', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.integer({ min: 2, max: 600 }), big),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (size, share) => {
          const index = Math.min(size - 1, Math.floor(share * size))
          expect(listNodeKeys(describeInclusionProof(index, size)).length).toBeLessThanOrEqual(2 * Math.log2(size))
        },
      ),
      { numRuns: 2000 },
    )
  })
  test('a consistency proof', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.integer({ min: 2, max: 600 }), big),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (size, share) => {
          const oldSize = Math.max(1, Math.floor(share * size))
          expect(listNodeKeys(describeConsistencyProof(oldSize, size)).length).toBeLessThanOrEqual(2 * Math.log2(size))
        },
      ),
      { numRuns: 2000 },
    )
  })
})

function flipBit(bytes: Uint8Array, bit: number): Uint8Array {
  const flipped = Uint8Array.from(bytes)
  flipped[bit >> 3]! ^= 1 << (bit & 7)
  return flipped
}

/** Every list that differs from the given one in the bit `bit` of one element. */
function withOneFlip(hashes: readonly Uint8Array[], bit: number): readonly (readonly Uint8Array[])[] {
  return hashes.map((hash, place) => hashes.with(place, flipBit(hash, bit)))
}

const anyBit = fc.nat(255)

test('an inclusion proof with any one bit flipped fails', () => {
  fc.assert(
    fc.property(anyLeaf, anyBit, ({ index, size }, bit) => {
      const claim = inclusionClaim(index, size)
      const forged = [
        { ...claim, leafHash: flipBit(claim.leafHash, bit) },
        { ...claim, root: flipBit(claim.root, bit) },
        ...withOneFlip(claim.proof, bit).map((proof) => ({ ...claim, proof })),
      ]
      expect(forged.filter((each) => verifyInclusion(sha256, each))).toEqual([])
    }),
    { numRuns: 300 },
  )
})

test('a consistency proof with any one bit flipped fails', () => {
  fc.assert(
    fc.property(anyTwoSizes, anyBit, ({ oldSize, newSize }, bit) => {
      const claim = consistencyClaim(oldSize, newSize)
      const forged = [
        { ...claim, oldRoot: flipBit(claim.oldRoot, bit) },
        { ...claim, newRoot: flipBit(claim.newRoot, bit) },
        ...withOneFlip(claim.proof, bit).map((proof) => ({ ...claim, proof })),
      ]
      expect(forged.filter((each) => verifyConsistency(sha256, each))).toEqual([])
    }),
    { numRuns: 300 },
  )
})

test('every bit of one whole inclusion proof counts', () => {
  const claim = inclusionClaim(5, 13)
  for (let bit = 0; bit < 256; bit++) {
    for (const proof of withOneFlip(claim.proof, bit)) expect(verifyInclusion(sha256, { ...claim, proof })).toBe(false)
  }
})

/** The ways to spoil a list of hashes without changing a hash, and with a hash that is none. */
function misshapen(proof: readonly Uint8Array[], other: Uint8Array): readonly (readonly Uint8Array[])[] {
  const places = [...proof.keys()]
  return [
    ...places.map((place) => proof.toSpliced(place, 1)),
    ...[...places, proof.length].map((place) => proof.toSpliced(place, 0, other)),
    ...[...places, proof.length].map((place) => proof.toSpliced(place, 0, new Uint8Array(0))),
    ...places.map((place) => proof.with(place, proof[place]!.slice(0, 31))),
    ...places.map((place) => proof.with(place, Uint8Array.from([...proof[place]!, 0]))),
    ...places.slice(1).map((place) => proof.with(place, proof[place - 1]!).with(place - 1, proof[place]!)),
  ]
}

test('an inclusion proof with an element more, less, swapped or of another length fails', () => {
  fc.assert(
    fc.property(anyLeaf, ({ index, size }) => {
      const claim = inclusionClaim(index, size)
      for (const other of [claim.root, claim.leafHash]) {
        const forged = misshapen(claim.proof, other)
        expect(forged.filter((proof) => verifyInclusion(sha256, { ...claim, proof }))).toEqual([])
      }
    }),
  )
})

test('a consistency proof with an element more, less, swapped or of another length fails', () => {
  fc.assert(
    fc.property(anyTwoSizes, ({ oldSize, newSize }) => {
      const claim = consistencyClaim(oldSize, newSize)
      for (const other of [claim.oldRoot, claim.newRoot]) {
        const forged = misshapen(claim.proof, other)
        expect(forged.filter((proof) => verifyConsistency(sha256, { ...claim, proof }))).toEqual([])
      }
    }),
  )
})

test('a leaf proves no other index of the same tree', () => {
  for (const size of [1, 2, 3, 7, 8, 21, 32]) {
    for (let index = 0; index < size; index++) {
      const claim = inclusionClaim(index, size)
      for (let other = 0; other < 2 * size; other++) {
        expect(verifyInclusion(sha256, { ...claim, index: other })).toBe(other === index)
      }
    }
  }
})

describe('numbers that cannot be are refused, not thrown', () => {
  const inclusion = inclusionClaim(2, 3)
  test.each([-1, 0.5, 3, 4, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])('index %d of 3', (index) => {
    expect(verifyInclusion(sha256, { ...inclusion, index })).toBe(false)
  })
  test.each([-1, 0, 1, 2, 2.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])('leaf 2 of size %d', (size) => {
    expect(verifyInclusion(sha256, { ...inclusion, size })).toBe(false)
  })
  const consistency = consistencyClaim(3, 7)
  test.each([-3, 0, 2, 4, 8, Number.NaN, 2 ** 53])('an old size of %d in place of 3', (oldSize) => {
    expect(verifyConsistency(sha256, { ...consistency, oldSize })).toBe(false)
  })
  test('an old size of 0, even with an empty proof and the empty root', () => {
    const oldRoot = tree.heads[0]!.root
    expect(verifyConsistency(sha256, { oldSize: 0, oldRoot, newSize: 0, newRoot: oldRoot, proof: [] })).toBe(false)
    expect(verifyConsistency(sha256, { ...consistency, oldSize: 0, oldRoot, proof: [] })).toBe(false)
  })
  test('equal sizes with different roots', () => {
    const claim = { oldSize: 3, newSize: 3, oldRoot: tree.heads[3]!.root, newRoot: tree.heads[4]!.root, proof: [] }
    expect(verifyConsistency(sha256, claim)).toBe(false)
  })
  // Stricter than the reference implementation's test data, which takes any two equal roots at equal sizes (195 of its
  // 196 vectors agree; the other one has a root of 12 bytes).
  test('roots and leaves that are not 32 bytes long', () => {
    for (const bytes of [new Uint8Array(0), new Uint8Array(9), new Uint8Array(33)]) {
      expect(verifyInclusion(sha256, { ...inclusion, leafHash: bytes })).toBe(false)
      expect(verifyInclusion(sha256, { ...inclusion, root: bytes })).toBe(false)
      expect(verifyInclusion(sha256, { leafHash: bytes, index: 0, size: 1, root: bytes, proof: [] })).toBe(false)
      expect(verifyConsistency(sha256, { ...consistency, oldRoot: bytes })).toBe(false)
      expect(verifyConsistency(sha256, { ...consistency, newRoot: bytes })).toBe(false)
      const equal = { oldSize: 3, newSize: 3, oldRoot: bytes, newRoot: bytes, proof: [] }
      expect(verifyConsistency(sha256, equal)).toBe(false)
    }
  })
})

describe('a forger who may choose the root too gets no further', () => {
  const leaf = (index: number): Uint8Array => tree.leafHashes[index]!
  const root = (size: number): Uint8Array => tree.heads[size]!.root
  const extra = root(5)

  test('a path longer than the tree is high', () => {
    const claim = { leafHash: leaf(1), index: 0, size: 1, root: root(2), proof: [leaf(0)] }
    expect(verifyInclusion(sha256, claim)).toBe(false)
  })
  test('a path shorter than the tree is high', () => {
    expect(verifyInclusion(sha256, { ...inclusionClaim(0, 4), size: 8 })).toBe(false)
  })
  test.each([-1, 0.5])('a leaf at index %d of a tree of one', (index) => {
    expect(verifyInclusion(sha256, { leafHash: leaf(0), index, size: 1, root: root(1), proof: [] })).toBe(false)
  })
  test('a consistency path longer than the trees are high', () => {
    const claim = consistencyClaim(3, 4)
    const [oldRoot, newRoot] = [claim.oldRoot, claim.newRoot].map((hash) => nodeHash(sha256, extra, hash))
    const forged = { ...claim, oldRoot: oldRoot!, newRoot: newRoot!, proof: [...claim.proof, extra] }
    expect(verifyConsistency(sha256, forged)).toBe(false)
  })
  test('a consistency path shorter than the new tree is high', () => {
    expect(verifyConsistency(sha256, { ...consistencyClaim(3, 4), newSize: 8 })).toBe(false)
  })
  test('an old tree longer than the new one', () => {
    const claim = { oldSize: 3, oldRoot: leaf(0), newSize: 2, newRoot: root(2), proof: [leaf(0), leaf(1)] }
    expect(verifyConsistency(sha256, claim)).toBe(false)
  })
  test('an old root of another length, where the path starts from it', () => {
    expect(verifyConsistency(sha256, { ...consistencyClaim(4, 7), oldRoot: new Uint8Array(9) })).toBe(false)
  })
})

test('without the index check, a leaf would prove a place outside the tree', () => {
  const outside = { ...inclusionClaim(0, 1), index: 1 }
  expect(followInclusionPath(sha256, outside)).toEqual(outside.root)
  expect(verifyInclusion(sha256, outside)).toBe(false)
})

test('with a hash function that ignores the node prefix, no proof longer than nothing verifies', () => {
  const broken: Sha256 = (bytes) => sha256(bytes[0] === 0x01 ? bytes.subarray(1) : bytes)
  expect(verifyInclusion(broken, inclusionClaim(5, 13))).toBe(false)
  expect(verifyConsistency(broken, consistencyClaim(5, 13))).toBe(false)
  expect(verifyInclusion(sha256, inclusionClaim(5, 13))).toBe(true)
  expect(verifyConsistency(sha256, consistencyClaim(5, 13))).toBe(true)
})

describe('asking for a proof that cannot be is a bug and is refused', () => {
  test.each([
    [0, 0],
    [3, 3],
    [-1, 3],
    [0.5, 3],
  ])('leaf %d of %d', (index, size) => {
    expect(() => describeInclusionProof(index, size)).toThrow(InvariantError)
  })
  test.each([
    [0, 3],
    [4, 3],
    [1.5, 3],
  ])('%d to %d leaves', (oldSize, newSize) => {
    expect(() => describeConsistencyProof(oldSize, newSize)).toThrow(InvariantError)
  })
  test('a node that was not fetched', () => {
    expect(() => buildProof(sha256, describeInclusionProof(0, 4), tree.nodes.slice(0, 1))).toThrow(InvariantError)
  })
})
