import { expect, test } from 'vitest'
import { entryLeafHash, entryText } from './entry'
import { extendBook, type NewEntry } from './extend-book'
import { appendLeaf, emptyHead, type RootedHead } from './merkle-tree'
import { buildProof, describeInclusionProof } from './proofs'
import { sha256 } from './sha256'
import { verifyInclusion } from './verify-proof'

function newEntry(step: number): NewEntry {
  return {
    club: '0199c0de-0000-7000-8000-00000000c1ab',
    entry: `0199c0de-0000-7000-8000-${step.toString(16).padStart(12, '0')}`,
    kind: 'equipment.counted',
    subject: '0199c0de-0000-7000-8000-0000000000d1',
    actor: null,
    at: '2026-09-03T17:20:00.000Z',
    facts: { cones: step },
  }
}

test('entries number themselves without gaps and each proves its place in the last head', () => {
  let head: RootedHead = emptyHead(sha256)
  const extensions = Array.from({ length: 20 }, (_, step) => {
    const extension = extendBook(sha256, head, newEntry(step))
    head = extension.head
    return extension
  })
  expect(extensions.map(({ entry }) => entry.seq)).toEqual(Array.from({ length: 20 }, (_, step) => step))
  const stored = extensions.flatMap(({ entry, leafHash, nodes }) => [
    { level: 0, index: entry.seq, hash: leafHash },
    ...nodes,
  ])
  for (const { entry, leafHash } of extensions) {
    const proof = buildProof(sha256, describeInclusionProof(entry.seq, 20), stored)
    expect(verifyInclusion(sha256, { leafHash, index: entry.seq, size: 20, root: head.root, proof })).toBe(true)
  }
})

test('an extension stores the text whose hash it appended', () => {
  const start = emptyHead(sha256)
  const { entry, text, leafHash, head } = extendBook(sha256, start, newEntry(0))
  expect(text).toBe(entryText(entry))
  expect(leafHash).toEqual(entryLeafHash(sha256, entry))
  expect(head).toEqual(appendLeaf(sha256, start, leafHash).head)
})

test('a caller cannot choose the number of an entry', () => {
  const chosen = { ...newEntry(0), seq: 41, v: 2 }
  expect(extendBook(sha256, emptyHead(sha256), chosen).entry).toMatchObject({ v: 1, seq: 0 })
})

test('a book is not changed by being extended', () => {
  const head = extendBook(sha256, emptyHead(sha256), newEntry(0)).head
  const before = structuredClone(head)
  extendBook(sha256, head, newEntry(1))
  expect(head).toEqual(before)
})
