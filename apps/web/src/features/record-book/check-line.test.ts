import type { LedgerInclusion } from '@espalier/contract/ledger'
import {
  appendLeaf,
  buildProof,
  describeConsistencyProof,
  describeInclusionProof,
  emptyHead,
  entryLeafHash,
  entryText,
  hexOf,
  nodeHash,
  type RootedHead,
  sha256,
  type TreeNode,
} from '@espalier/domain/ledger'
import { describe, expect, test } from 'vitest'
import { checkLine, sidesOfPath } from './check-line'

const idOf = (number: number) => `0192f000-0000-7000-8000-${String(number).padStart(12, '0')}`

function lineOf(seq: number) {
  return {
    v: 1,
    club: idOf(1),
    seq,
    entry: idOf(100 + seq),
    kind: 'season.added',
    subject: idOf(200 + seq),
    actor: null,
    at: '2026-09-01T16:30:00.000Z',
    facts: { first: '2026-09-01' },
  } as const
}

/** A book of so many lines with everything a server keeps of it. */
function bookOf(size: number) {
  let head: RootedHead = emptyHead(sha256)
  const nodes: TreeNode[] = []
  for (let seq = 0; seq < size; seq += 1) {
    const leaf = entryLeafHash(sha256, lineOf(seq))
    const append = appendLeaf(sha256, head, leaf)
    nodes.push({ level: 0, index: seq, hash: leaf }, ...append.nodes)
    head = append.head
  }
  return { head: { size, root: hexOf(head.root) }, nodes }
}

function inclusionIn(size: number, index: number): LedgerInclusion {
  const { head, nodes } = bookOf(size)
  const line = lineOf(index)
  const path = buildProof(sha256, describeInclusionProof(index, size), nodes).map(hexOf)
  const entry = {
    entryId: line.entry,
    seq: index,
    kind: line.kind,
    subjectId: line.subject,
    at: line.at,
    body: entryText(line),
    leafHash: hexOf(entryLeafHash(sha256, line)),
  }
  return { entry, index, size, path, root: head.root }
}

function consistencyOf(from: number, to: number) {
  const newer = bookOf(to)
  const path = buildProof(sha256, describeConsistencyProof(from, to), newer.nodes).map(hexOf)
  return { from, to, fromRoot: bookOf(from).head.root, toRoot: newer.head.root, path }
}

describe('a line of the record book', () => {
  test('holds against the head that is shown', () => {
    expect(checkLine(idOf(103), bookOf(11).head, inclusionIn(11, 3), null)).toEqual({ holds: true, grownTo: null })
  })

  test('holds when the book has grown, and only with the proof of that', () => {
    const shown = bookOf(7).head
    const proof = inclusionIn(11, 3)
    expect(checkLine(idOf(103), shown, proof, consistencyOf(7, 11))).toEqual({ holds: true, grownTo: 11 })
    expect(checkLine(idOf(103), shown, proof, null)).toEqual({ holds: false, because: 'consistency' })
    expect(checkLine(idOf(103), { ...shown, root: bookOf(6).head.root }, proof, consistencyOf(7, 11))).toEqual({
      holds: false,
      because: 'consistency',
    })
  })

  test('does not hold when one letter of its text is changed', () => {
    const proof = inclusionIn(11, 3)
    const changed = { ...proof, entry: { ...proof.entry, body: proof.entry.body.replace('2026-09-01', '2026-09-02') } }
    expect(checkLine(idOf(103), bookOf(11).head, changed, null)).toEqual({ holds: false, because: 'text' })
  })

  test('does not hold when text and hash are changed together', () => {
    const proof = inclusionIn(11, 3)
    const line = { ...lineOf(3), facts: { first: '2026-09-02' } }
    const entry = { ...proof.entry, body: entryText(line), leafHash: hexOf(entryLeafHash(sha256, line)) }
    expect(checkLine(idOf(103), bookOf(11).head, { ...proof, entry }, null)).toEqual({ holds: false, because: 'path' })
  })

  test('does not hold against another root, or for another line', () => {
    const proof = inclusionIn(11, 3)
    expect(checkLine(idOf(103), { size: 11, root: bookOf(10).head.root }, proof, null)).toEqual({
      holds: false,
      because: 'path',
    })
    expect(checkLine(idOf(104), bookOf(11).head, proof, null)).toEqual({ holds: false, because: 'other' })
  })
})

describe('the sides of a path', () => {
  test('joining by them leads to the root, for every line of every small book', () => {
    for (let size = 1; size <= 20; size += 1) {
      for (let index = 0; index < size; index += 1) {
        const proof = inclusionIn(size, index)
        const sides = sidesOfPath(index, size, proof.path.length)
        const joined = proof.path.reduce(
          (hash, sibling, bend) => {
            const other = Uint8Array.from(Buffer.from(sibling, 'hex'))
            return sides[bend] === 'left' ? nodeHash(sha256, other, hash) : nodeHash(sha256, hash, other)
          },
          entryLeafHash(sha256, lineOf(index)),
        )
        expect(hexOf(joined)).toBe(proof.root)
      }
    }
  })
})
