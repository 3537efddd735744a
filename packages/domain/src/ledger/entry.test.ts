import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { InvariantError } from '../quantities'
import { hexOf } from './bytes'
import { canonicalJson, type PlainValue } from './canonical-json'
import { entryBytes, entryKinds, entryLeafHash, entryText, entryTextLeafHash, type LedgerEntry } from './entry'
import { growTree } from './fixtures/grown-tree'
import threeEntries from './fixtures/three-entries.json'
import { sha256 } from './sha256'

const entry: LedgerEntry = {
  v: 1,
  club: '0199c0de-0000-7000-8000-00000000c1ab',
  seq: 7,
  entry: '0199c0de-0000-7000-8000-0000000000e7',
  kind: 'session.reported',
  subject: '0199c0de-0000-7000-8000-0000000000d1',
  team: '0199c0de-0000-7000-8000-0000000000a1',
  actor: '0199c0de-0000-7000-8000-000000000c0a',
  at: '2026-09-03T17:20:00.000Z',
  facts: {
    turnout: 8,
    late: false,
    second: null,
    note: 'ab'.repeat(32),
    format: 'us-7v7',
    age: 'U10',
    day: '2026-09-03',
  },
}

describe('three canonical entries lead to the root that two independent programs computed', () => {
  test('their text, leaf hashes and root', () => {
    const texts = threeEntries.entries.map((each) => canonicalJson(each as PlainValue))
    expect(texts).toEqual(threeEntries.canonical)
    const leafHashes = texts.map((text) => entryTextLeafHash(sha256, text))
    expect(leafHashes.map(hexOf)).toEqual(threeEntries.leafHashes)
    expect(hexOf(growTree(sha256, leafHashes).heads[3]!.root)).toBe(threeEntries.root)
  })
})

test('an entry is hashed as this text, for ever', () => {
  expect(entryText(entry)).toBe(
    '{"actor":"0199c0de-0000-7000-8000-000000000c0a","at":"2026-09-03T17:20:00.000Z",' +
      '"club":"0199c0de-0000-7000-8000-00000000c1ab","entry":"0199c0de-0000-7000-8000-0000000000e7",' +
      '"facts":{"age":"U10","day":"2026-09-03","format":"us-7v7","late":false,' +
      `"note":"${'ab'.repeat(32)}","second":null,"turnout":8},` +
      '"kind":"session.reported","seq":7,"subject":"0199c0de-0000-7000-8000-0000000000d1",' +
      '"team":"0199c0de-0000-7000-8000-0000000000a1","v":1}',
  )
})

test('an entry without a team and without an actor says so', () => {
  const { team: _, ...clubEntry } = entry
  const written = JSON.parse(entryText({ ...clubEntry, actor: null })) as Record<string, unknown>
  expect('team' in written).toBe(false)
  expect(written.actor).toBeNull()
})

test('nothing slips in beside the known members', () => {
  const sneaked = { ...entry, name: 'Wren Alder' }
  expect(entryText(sneaked)).toBe(entryText(entry))
})

test('the stored text and the entry have one leaf hash, and another spelling of it has another', () => {
  const text = entryText(entry)
  expect(entryTextLeafHash(sha256, text)).toEqual(entryLeafHash(sha256, entry))
  for (const spelling of [
    text.replace('"seq":7', '"seq":7.0'),
    text.replace('"seq":7', '"seq": 7'),
    text.replace('U10', '\\u005510'),
    JSON.stringify(Object.fromEntries(Object.entries(JSON.parse(text)).reverse())),
  ]) {
    expect(JSON.parse(spelling)).toEqual(JSON.parse(text))
    expect(entryTextLeafHash(sha256, spelling)).not.toEqual(entryTextLeafHash(sha256, text))
  }
})

test('changing any member changes the leaf', () => {
  const other = entry.entry
  const changed: LedgerEntry[] = [
    { ...entry, club: other },
    { ...entry, seq: 8 },
    { ...entry, entry: entry.subject },
    { ...entry, kind: 'report.superseded' },
    { ...entry, subject: other },
    { ...entry, team: other },
    { ...entry, actor: other },
    { ...entry, actor: null },
    { ...entry, at: '2026-09-03T17:20:00.001Z' },
    { ...entry, facts: { ...entry.facts, turnout: 9 } },
    { ...entry, facts: { ...entry.facts, late: true } },
  ]
  const hashes = [entry, ...changed].map((each) => hexOf(entryLeafHash(sha256, each)))
  expect(new Set(hashes).size).toBe(hashes.length)
})

test('an entry is plain ASCII, whatever facts it may hold', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.integer(), (text, count) => {
      const attempt = { ...entry, facts: { text, count } }
      try {
        expect([...entryBytes(attempt)].every((byte) => byte < 0x80)).toBe(true)
      } catch (refusal) {
        expect(refusal).toBeInstanceOf(InvariantError)
      }
    }),
  )
})

describe('facts may be', () => {
  test.each([
    ['an id', entry.club],
    ['a keyed hash', 'f'.repeat(64)],
    ['a code', 'needs-bibs'],
    ['a dotted code', 'us-soccer.7v7'],
    ['a capital code', 'LCB'],
    ['an age group', 'U12'],
    ['a day', '2026-09-03'],
    ['an instant', '2026-09-03T17:20:00.000Z'],
    ['a time zone', 'America/Argentina/Buenos_Aires'],
    ['UTC', 'UTC'],
    ['a negative whole number', -3],
    ['yes or no', true],
    ['nothing', null],
  ])('%s', (_, fact) => {
    expect(JSON.parse(entryText({ ...entry, facts: { fact } })).facts).toEqual({ fact })
  })
})

describe('an entry is refused with', () => {
  test.each<[string, object]>([
    ['another version', { v: 2 }],
    ['a negative seq', { seq: -1 }],
    ['a fractional seq', { seq: 1.5 }],
    ['an unknown kind', { kind: 'player.praised' }],
    ['a local time', { at: '2026-09-03T17:20:00.000+02:00' }],
    ['a time without milliseconds', { at: '2026-09-03T17:20:00Z' }],
    ['a month that is none', { at: '2026-13-03T17:20:00.000Z' }],
    ['a club that is no id', { club: 'rivermead' }],
    ['an upper-case id', { entry: entry.entry.toUpperCase() }],
    ['a subject by name', { subject: 'Wren' }],
    ['a team by name', { team: 'under tens' }],
    ['an actor by name', { actor: 'Wren' }],
    ['a first name as a fact', { facts: { player: 'Wren' } }],
    ['a full name as a fact', { facts: { player: 'Wren Alder' } }],
    ['a sentence as a fact', { facts: { note: 'went well' } }],
    ['an e-mail address as a fact', { facts: { contact: 'wren@example.org' } }],
    ['an accented word as a fact', { facts: { word: 'péché' } }],
    ['an empty text as a fact', { facts: { word: '' } }],
    ['a very long code', { facts: { code: 'a'.repeat(129) } }],
    ['a fraction as a fact', { facts: { share: 0.5 } }],
    ['a number beyond exactness', { facts: { count: 2 ** 53 } }],
    ['a list as a fact', { facts: { players: [1] } }],
    ['a record as a fact', { facts: { player: { shirt: 7 } } }],
    ['an undefined fact', { facts: { player: undefined } }],
    ['a fact with an odd name', { facts: { 'Wren Alder': 1 } }],
  ])('%s', (_, change) => {
    expect(() => entryText({ ...entry, ...change } as LedgerEntry)).toThrow(InvariantError)
  })

  test('a message that does not repeat what may be a name', () => {
    expect(() => entryText({ ...entry, facts: { player: 'Wren Alder' } })).toThrow(/^(?!.*Wren).*$/)
  })
})

test('every kind is one word for a thing and one for what happened to it', () => {
  expect(new Set(entryKinds).size).toBe(entryKinds.length)
  for (const kind of entryKinds) expect(kind).toMatch(/^[a-z]+(?:-[a-z]+)*\.[a-z]+$/)
})
