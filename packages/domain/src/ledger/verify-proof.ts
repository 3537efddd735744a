import { sameBytes } from './bytes'
import { nodeHash } from './merkle-tree'
import { HASH_LENGTH_BYTES, type Sha256 } from './sha256'

export type InclusionClaim = {
  readonly leafHash: Uint8Array
  readonly index: number
  /** Taken from the signed head: a proof alone does not bind it. */
  readonly size: number
  readonly root: Uint8Array
  readonly proof: readonly Uint8Array[]
}

export type ConsistencyClaim = {
  readonly oldSize: number
  readonly oldRoot: Uint8Array
  readonly newSize: number
  readonly newRoot: Uint8Array
  readonly proof: readonly Uint8Array[]
}

/** True only if the leaf stands at this index of the tree with this root. Never throws, whatever it is given. */
export function verifyInclusion(sha256: Sha256, claim: InclusionClaim): boolean {
  const { leafHash, index, size, root, proof } = claim
  if (!isCount(index) || !isCount(size) || index >= size) return false
  if (![leafHash, root, ...proof].every(isHash)) return false
  const reached = followInclusionPath(sha256, claim)
  return reached !== null && sameBytes(reached, root)
}

/** True only if the old tree is the beginning of the new one. Never throws, whatever it is given. */
export function verifyConsistency(sha256: Sha256, claim: ConsistencyClaim): boolean {
  const { oldSize, oldRoot, newSize, newRoot, proof } = claim
  if (!isCount(oldSize) || !isCount(newSize) || oldSize === 0 || oldSize > newSize) return false
  if (![oldRoot, newRoot, ...proof].every(isHash)) return false
  if (oldSize === newSize) return proof.length === 0 && sameBytes(oldRoot, newRoot)
  if (proof.length === 0) return false
  const reached = followConsistencyPath(sha256, claim)
  return reached !== null && sameBytes(reached.oldRoot, oldRoot) && sameBytes(reached.newRoot, newRoot)
}

function isCount(value: number): boolean {
  return Number.isSafeInteger(value) && value >= 0
}

function isHash(value: Uint8Array): boolean {
  return value.length === HASH_LENGTH_BYTES
}

/** One level of the tree: `at` is where the path stands, `last` the level's last node. */
type Place = { readonly at: number; readonly last: number }

function isOdd(index: number): boolean {
  return index % 2 === 1
}

function oneLevelUp({ at, last }: Place): Place {
  return { at: Math.floor(at / 2), last: Math.floor(last / 2) }
}

/** A last node without a right neighbour rises unhashed until it is someone's right neighbour, or the root. */
function upPastLevelsWithoutNeighbour(place: Place): Place {
  let risen = place
  while (!isOdd(risen.at) && risen.at !== 0) risen = oneLevelUp(risen)
  return risen
}

/**
 * The root that a path leads to, or null where the path is too long or too short.
 * Source: RFC 9162, section 2.1.3.2, steps 2 to 5. Without step 1 (index below size) it proves nothing.
 */
export function followInclusionPath(sha256: Sha256, claim: InclusionClaim): Uint8Array | null {
  let place: Place = { at: claim.index, last: claim.size - 1 }
  let hash = claim.leafHash
  for (const element of claim.proof) {
    if (place.last === 0) return null
    if (isOdd(place.at) || place.at === place.last) {
      hash = nodeHash(sha256, element, hash)
      place = upPastLevelsWithoutNeighbour(place)
    } else {
      hash = nodeHash(sha256, hash, element)
    }
    place = oneLevelUp(place)
  }
  return place.last === 0 ? hash : null
}

/** Source: RFC 9162, section 2.1.4.2, steps 2 to 7. */
function followConsistencyPath(
  sha256: Sha256,
  { oldSize, oldRoot, newSize, proof }: ConsistencyClaim,
): { readonly oldRoot: Uint8Array; readonly newRoot: Uint8Array } | null {
  let place: Place = { at: oldSize - 1, last: newSize - 1 }
  while (isOdd(place.at)) place = oneLevelUp(place)
  // Having risen to 0 means that the old tree is one complete subtree, whose root the verifier holds already.
  const [first, ...rest] = place.at === 0 ? [oldRoot, ...proof] : proof
  if (!first) return null
  let oldHash = first
  let newHash = first
  for (const element of rest) {
    if (place.last === 0) return null
    if (isOdd(place.at) || place.at === place.last) {
      oldHash = nodeHash(sha256, element, oldHash)
      newHash = nodeHash(sha256, element, newHash)
      place = upPastLevelsWithoutNeighbour(place)
    } else {
      newHash = nodeHash(sha256, newHash, element)
    }
    place = oneLevelUp(place)
  }
  return place.last === 0 ? { oldRoot: oldHash, newRoot: newHash } : null
}
