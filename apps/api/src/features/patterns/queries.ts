import type { ClubDb } from '../../db/with-club'

export type PatternRow = { readonly pattern_id: string; readonly version: number; readonly doc: unknown }

/** The latest version of each pattern. */
export function listPatterns(db: ClubDb): Promise<readonly PatternRow[]> {
  return db.sql.rows<PatternRow>({
    name: 'list-patterns',
    text: `select p.pattern_id, p.version, v.doc
           from pattern p join pattern_version v using (club_id, pattern_id, version)
           where p.club_id = $1 and p.retired_at is null order by p.title, p.pattern_id`,
    values: [db.clubId],
  })
}

export async function findPattern(db: ClubDb, patternId: string): Promise<PatternRow | null> {
  const rows = await db.sql.rows<PatternRow>({
    name: 'find-pattern',
    text: `select p.pattern_id, p.version, v.doc
           from pattern p join pattern_version v using (club_id, pattern_id, version)
           where p.club_id = $1 and p.pattern_id = $2 and p.retired_at is null`,
    values: [db.clubId, patternId],
  })
  return rows[0] ?? null
}

/** Holds patterns as they stand, in one order, so that a publication freezes what it has checked. */
export async function lockPatterns(db: ClubDb, patternIds: readonly string[]): Promise<readonly PatternRow[]> {
  await db.sql.rows({
    name: 'lock-patterns',
    text: `select pattern_id from pattern where club_id = $1 and pattern_id = any($2) and retired_at is null
           order by pattern_id for no key update`,
    values: [db.clubId, patternIds],
  })
  // A statement of its own: after the wait it sees the version that the lock protects.
  return db.sql.rows<PatternRow>({
    name: 'list-locked-patterns',
    text: `select p.pattern_id, p.version, v.doc
           from pattern p join pattern_version v using (club_id, pattern_id, version)
           where p.club_id = $1 and p.pattern_id = any($2) and p.retired_at is null order by p.pattern_id`,
    values: [db.clubId, patternIds],
  })
}
