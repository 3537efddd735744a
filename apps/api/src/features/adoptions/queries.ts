import type { ClubDb } from '../../db/with-club'

export type AdoptionRow = {
  readonly from_date: string
  readonly curriculum_id: string
  readonly number: number
  readonly content_hash: Buffer
  readonly content: string
}

/** Every adoption of a team, in the order in which they come into force. */
export function listAdoptions(db: ClubDb, teamId: string): Promise<readonly AdoptionRow[]> {
  return db.sql.rows<AdoptionRow>({
    name: 'list-adoptions',
    text: `select a.from_date, a.curriculum_id, a.number, v.content_hash, v.content
           from adoption a join curriculum_version v using (club_id, curriculum_id, number)
           where a.club_id = $1 and a.team_id = $2 order by a.from_date, a.ordinal`,
    values: [db.clubId, teamId],
  })
}

/** The version in force on a day: the latest from day that is not after it, and of one day the last word. */
export function adoptionInForce(adoptions: readonly AdoptionRow[], day: string): AdoptionRow | null {
  return adoptions.filter((adoption) => adoption.from_date <= day).at(-1) ?? null
}
