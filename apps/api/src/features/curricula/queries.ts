import type { FormatId } from '@espalier/domain/formats'
import type { ClubDb } from '../../db/with-club'

export type DraftRow = {
  readonly curriculum_id: string
  readonly version: number
  readonly based_on: number | null
  readonly doc: unknown
}

export async function findDraft(db: ClubDb, curriculumId: string): Promise<DraftRow | null> {
  const rows = await db.sql.rows<DraftRow>({
    name: 'find-draft',
    text: 'select curriculum_id, version, based_on, doc from draft where club_id = $1 and curriculum_id = $2',
    values: [db.clubId, curriculumId],
  })
  return rows[0] ?? null
}

/** Holds a curriculum, then its draft: the order in which everything about a curriculum is locked. */
export async function lockDraft(db: ClubDb, curriculumId: string): Promise<DraftRow | null> {
  await db.sql.rows({
    name: 'lock-curriculum',
    text: 'select 1 from curriculum where club_id = $1 and curriculum_id = $2 for no key update',
    values: [db.clubId, curriculumId],
  })
  const rows = await db.sql.rows<DraftRow>({
    name: 'lock-draft',
    text: `select curriculum_id, version, based_on, doc from draft
           where club_id = $1 and curriculum_id = $2 for no key update`,
    values: [db.clubId, curriculumId],
  })
  return rows[0] ?? null
}

export type VersionRow = {
  readonly curriculum_id: string
  readonly number: number
  readonly published_at: Date
  readonly published_by: string
  readonly content_hash: Buffer
  readonly entry_id: string
  readonly offered: boolean
  readonly signed: boolean
}

const SUMMARY = `v.curriculum_id, v.number, v.published_at, m.display_name as published_by, v.content_hash, v.entry_id,
  v.offered, exists (select from version_signature s where s.club_id = v.club_id
                     and s.curriculum_id = v.curriculum_id and s.number = v.number) as signed`

export function listVersions(db: ClubDb, curriculumId: string | null): Promise<readonly VersionRow[]> {
  return db.sql.rows<VersionRow>({
    name: 'list-versions',
    text: `select ${SUMMARY} from curriculum_version v
           join membership m on m.club_id = v.club_id and m.member_id = v.published_by
           where v.club_id = $1 and ($2::uuid is null or v.curriculum_id = $2)
           order by v.curriculum_id, v.number desc`,
    values: [db.clubId, curriculumId],
  })
}

export type VersionWithContent = VersionRow & { readonly content: string }

export async function findVersion(
  db: ClubDb,
  curriculumId: string,
  number: number,
): Promise<VersionWithContent | null> {
  const rows = await db.sql.rows<VersionWithContent>({
    name: 'find-version',
    text: `select ${SUMMARY}, v.content from curriculum_version v
           join membership m on m.club_id = v.club_id and m.member_id = v.published_by
           where v.club_id = $1 and v.curriculum_id = $2 and v.number = $3`,
    values: [db.clubId, curriculumId, number],
  })
  return rows[0] ?? null
}

export type CurriculumRow = {
  readonly curriculum_id: string
  readonly name: string
  readonly age_group: string
  readonly format_id: FormatId
  readonly stages: number
  readonly draft_version: number
}

/** Curricula as their drafts describe them, for who may see drafts. */
export function listCurricula(db: ClubDb): Promise<readonly CurriculumRow[]> {
  return db.sql.rows<CurriculumRow>({
    name: 'list-curricula',
    text: `select c.curriculum_id, c.name, c.age_group, d.version as draft_version, d.doc ->> 'formatId' as format_id,
             (select coalesce(sum(jsonb_array_length(p -> 'stages')), 0)::int
              from jsonb_array_elements(d.doc -> 'progressions') as p) as stages
           from curriculum c join draft d using (club_id, curriculum_id)
           where c.club_id = $1 order by c.name, c.curriculum_id`,
    values: [db.clubId],
  })
}

export type PublishedCurriculumRow = Omit<CurriculumRow, 'draft_version'>

/** Curricula as their latest versions describe them, for everybody else; what was never published is not there. */
export function listPublishedCurricula(db: ClubDb): Promise<readonly PublishedCurriculumRow[]> {
  return db.sql.rows<PublishedCurriculumRow>({
    name: 'list-published-curricula',
    text: `select v.curriculum_id, content ->> 'name' as name, content ->> 'ageGroup' as age_group,
             content ->> 'formatId' as format_id,
             (select count(*)::int from version_stage s where s.club_id = $1
              and s.curriculum_id = v.curriculum_id and s.number = v.number) as stages
           from (select distinct on (curriculum_id) curriculum_id, number, content::jsonb as content
                 from curriculum_version where club_id = $1 order by curriculum_id, number desc) v
           order by name, v.curriculum_id`,
    values: [db.clubId],
  })
}
