import type { NodeKey, TreeNode } from '@espalier/domain/ledger'
import type { ClubDb } from '../../db/with-club'

export type EntryRow = {
  readonly entry_id: string
  readonly seq: number
  readonly kind: string
  readonly subject_id: string
  readonly team_id: string | null
  readonly at: Date
  readonly body: string
  readonly leaf_hash: Buffer
}

export type HeadRow = { readonly size: number; readonly peaks: readonly Buffer[]; readonly root: Buffer }

export async function findHead(db: ClubDb): Promise<HeadRow | null> {
  const rows = await db.sql.rows<HeadRow>({
    name: 'find-ledger-head',
    text: 'select size, peaks, root from ledger_head where club_id = $1',
    values: [db.clubId],
  })
  return rows[0] ?? null
}

export type SealRow = { readonly size: number; readonly at: Date }

export async function findLastSeal(db: ClubDb): Promise<SealRow | null> {
  const rows = await db.sql.rows<SealRow>({
    name: 'find-last-seal',
    text: 'select size, at from checkpoint where club_id = $1 order by size desc limit 1',
    values: [db.clubId],
  })
  return rows[0] ?? null
}

export const ENTRIES_A_PAGE = 100

/** Newest first; for own teams only what belongs to them. */
export function listEntries(
  db: ClubDb,
  wish: {
    readonly subjectId: string | null
    readonly before: number | null
    readonly teamIds: readonly string[] | null
  },
): Promise<readonly EntryRow[]> {
  return db.sql.rows<EntryRow>({
    name: 'list-ledger-entries',
    text: `select entry_id, seq, kind, subject_id, team_id, at, body, leaf_hash from ledger_entry
           where club_id = $1 and ($2::uuid is null or subject_id = $2) and ($3::bigint is null or seq < $3)
             and ($4::uuid[] is null or team_id = any($4))
           order by seq desc limit ${ENTRIES_A_PAGE + 1}`,
    values: [db.clubId, wish.subjectId, wish.before, wish.teamIds],
  })
}

export async function findEntry(db: ClubDb, entryId: string): Promise<EntryRow | null> {
  const rows = await db.sql.rows<EntryRow>({
    name: 'find-ledger-entry',
    text: `select entry_id, seq, kind, subject_id, team_id, at, body, leaf_hash from ledger_entry
           where club_id = $1 and entry_id = $2`,
    values: [db.clubId, entryId],
  })
  return rows[0] ?? null
}

/** The nodes of a proof in one query: level 0 stands with the entries, higher levels in their own table. */
export async function listNodes(db: ClubDb, keys: readonly NodeKey[]): Promise<readonly TreeNode[]> {
  const rows = await db.sql.rows<{ level: number; idx: number; hash: Buffer }>({
    name: 'list-ledger-nodes',
    text: `select level, idx, hash from ledger_node
           where club_id = $1 and (level, idx) in (select * from unnest($2::smallint[], $3::bigint[]))
           union all
           select 0, seq, leaf_hash from ledger_entry where club_id = $1 and seq = any($4)`,
    values: [
      db.clubId,
      keys.map(({ level }) => level),
      keys.map(({ index }) => index),
      keys.filter(({ level }) => level === 0).map(({ index }) => index),
    ],
  })
  return rows.map(({ level, idx, hash }) => ({ level, index: idx, hash }))
}
