import { extendBook, type NewEntry } from '@espalier/domain/ledger'
import { assert } from '@espalier/domain/quantities'
import type { ClubDb } from '../db/with-club'
import { nodeSha256 } from './node-sha256'

type HeadRow = { readonly size: number; readonly peaks: readonly Buffer[] }

/**
 * Adds one line to the club's record book. Called last in a transaction: the head is the only row that all writers of
 * a club wait for, and it is held from here to the commit alone.
 */
export async function appendEntry(db: ClubDb, entry: NewEntry): Promise<void> {
  const heads = await db.sql.rows<HeadRow>({
    name: 'lock-ledger-head',
    text: 'select size, peaks from ledger_head where club_id = $1 for update',
    values: [db.clubId],
  })
  assert(heads[0], 'every club has a record book from its first transaction on')
  const added = extendBook(nodeSha256, heads[0], entry)
  const changed = await db.sql.changed({
    name: 'append-ledger-entry',
    text: APPEND,
    values: [
      db.clubId,
      added.entry.seq,
      entry.entry,
      entry.kind,
      entry.subject,
      entry.team ?? null,
      entry.actor,
      entry.at,
      added.text,
      added.leafHash,
      added.nodes.map((node) => node.level),
      added.nodes.map((node) => node.index),
      added.nodes.map((node) => Buffer.from(node.hash)),
      added.head.size,
      added.head.peaks.map((peak) => Buffer.from(peak)),
      added.head.root,
    ],
  })
  assert(changed === 1, 'the head moves with each entry')
}

const APPEND = `
  with entry as (
    insert into ledger_entry (club_id, seq, entry_id, kind, subject_id, team_id, actor_id, at, body, leaf_hash)
    values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)
  ), nodes as (
    insert into ledger_node (club_id, level, idx, hash)
    select $1, level, idx, hash from unnest($11::smallint[], $12::bigint[], $13::bytea[]) as node (level, idx, hash)
  )
  update ledger_head set size = $14, peaks = $15, root = $16 where club_id = $1`

/** The book of a new club, before its first line. */
export async function openBook(db: ClubDb, emptyRoot: Uint8Array): Promise<void> {
  await db.sql.changed({
    name: 'open-ledger',
    text: "insert into ledger_head (club_id, size, peaks, root) values ($1, 0, '{}', $2)",
    values: [db.clubId, emptyRoot],
  })
}
