import { assert } from '../quantities'
import { utf8Bytes } from './bytes'
import { canonicalJson } from './canonical-json'
import { leafHash } from './merkle-tree'
import type { Sha256 } from './sha256'

/** Every sort of fact that a club's record book can hold. A kind is never renamed: old entries keep theirs. */
export const entryKinds = [
  'club.created',
  'club-limits.changed',
  'season.added',
  'person.added',
  'person.changed',
  'person.left',
  'sign-in-link.made',
  'team.added',
  'team-reach.measured',
  'space.measured',
  'slot.added',
  'equipment.counted',
  'squad.imported',
  'player.changed',
  'pattern.saved',
  'curriculum.created',
  'draft.saved',
  'version.published',
  'version.adopted',
  'evening.planned',
  'session.reported',
  'report.superseded',
  'date.changed',
] as const

export type EntryKind = (typeof entryKinds)[number]

/**
 * What happened, as ids, codes, counts, days and hashes. Never a name and never a sentence: of a text only its keyed
 * hash (HMAC-SHA-256, 64 hexadecimal digits) enters, so that deleting text and key erases it and the book still holds.
 */
export type EntryFacts = { readonly [fact: string]: string | number | boolean | null }

/** One line of the book, as it is hashed. */
export type LedgerEntry = {
  readonly v: 1
  readonly club: string
  /** Counts from 0 without gaps in each club, and is the leaf's index in the tree. */
  readonly seq: number
  readonly entry: string
  readonly kind: EntryKind
  /** The thing it is about. */
  readonly subject: string
  /** Only where the fact belongs to a team, so that its coach may read it. */
  readonly team?: string
  /** The member who did it; null where the service did it by itself. */
  readonly actor: string | null
  /** UTC with milliseconds, as in 2026-09-03T17:20:00.000Z. */
  readonly at: string
  readonly facts: EntryFacts
}

const ID = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/
const INSTANT = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}Z$/
const FACT_NAME = /^[a-z][A-Za-z0-9]*$/

/** Lower-case codes, ids, hexadecimal and days; short capital codes such as U10 or GK; instants; time zones. */
const FACT_TEXTS: readonly RegExp[] = [
  /^[a-z0-9]+(?:[._:-][a-z0-9]+)*$/,
  /^[A-Z]{1,4}\d{0,2}$/,
  INSTANT,
  /^[A-Z][A-Za-z_]*(?:\/[A-Z][A-Za-z_-]*)+$/,
]
const FACT_TEXT_LENGTH_MAX = 128

/**
 * The exact text that is stored and hashed: RFC 8785 over the known members only, so nothing slips in beside them. A
 * malformed entry is a bug of ours and is refused here, before it could stand in a book that cannot be corrected.
 */
export function entryText(entry: LedgerEntry): string {
  assertEntry(entry)
  const { v, club, seq, kind, subject, team, actor, at, facts } = entry
  const body = { v, club, seq, entry: entry.entry, kind, subject, actor, at, facts }
  return canonicalJson(team === undefined ? body : { ...body, team })
}

export function entryBytes(entry: LedgerEntry): Uint8Array {
  return utf8Bytes(entryText(entry))
}

export function entryLeafHash(sha256: Sha256, entry: LedgerEntry): Uint8Array {
  return leafHash(sha256, entryBytes(entry))
}

/** The leaf hash of a stored line. It hashes the text as it stands: another spelling of the same JSON is another leaf. */
export function entryTextLeafHash(sha256: Sha256, text: string): Uint8Array {
  return leafHash(sha256, utf8Bytes(text))
}

function assertEntry(entry: LedgerEntry): void {
  assert(entry.v === 1, 'this writes entries of version 1')
  assert(Number.isSafeInteger(entry.seq) && entry.seq >= 0, 'seq is a whole number, not negative')
  assert(entryKinds.includes(entry.kind), 'an entry has a known kind')
  assert(INSTANT.test(entry.at), 'at is an instant in UTC with milliseconds')
  for (const [member, id] of [
    ['club', entry.club],
    ['entry', entry.entry],
    ['subject', entry.subject],
    ['team', entry.team ?? entry.club],
    ['actor', entry.actor ?? entry.club],
  ] as const) {
    assert(ID.test(id), `${member} is a lower-case UUID`)
  }
  for (const [name, fact] of Object.entries(entry.facts)) assertFact(name, fact)
}

// The messages name the fact and never its value: what was refused may be somebody's name.
function assertFact(name: string, fact: unknown): void {
  assert(FACT_NAME.test(name), 'a fact is named in ASCII letters and digits')
  switch (typeof fact) {
    case 'string':
      assert(fact.length <= FACT_TEXT_LENGTH_MAX, `the fact ${name} is too long for a code`)
      assert(
        FACT_TEXTS.some((form) => form.test(fact)),
        `the fact ${name} is neither a code, an id, a hash, a day, an instant nor a time zone`,
      )
      return
    case 'number':
      assert(Number.isSafeInteger(fact), `the fact ${name} must be a whole number`)
      return
    case 'boolean':
      return
    default:
      assert(fact === null, `the fact ${name} must be a single value`)
  }
}
