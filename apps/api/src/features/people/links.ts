import type { ClubDb } from '../../db/with-club'

/** Seven days (habit: common practice, no source): long enough to pass a link on by hand at the next training. */
export const LINK_LIFE_MILLISECONDS = 7 * 86_400_000

export type NewLink = {
  readonly linkId: string
  readonly memberId: string
  readonly tokenHash: Buffer
  readonly madeBy: string | null
  readonly now: number
}

export async function insertLink(db: ClubDb, link: NewLink): Promise<void> {
  await db.sql.changed({
    name: 'insert-sign-in-link',
    text: `insert into sign_in_link (club_id, link_id, member_id, token_hash, made_by, expires_at)
           values ($1, $2, $3, $4, $5, $6)`,
    values: [
      db.clubId,
      link.linkId,
      link.memberId,
      link.tokenHash,
      link.madeBy,
      new Date(link.now + LINK_LIFE_MILLISECONDS),
    ],
  })
}

/** A lost link must not open a door later: a new one, or leaving, ends those that wait. */
export async function revokeLinks(db: ClubDb, memberId: string, at: Date): Promise<void> {
  await db.sql.changed({
    name: 'revoke-sign-in-links',
    text: `update sign_in_link set revoked_at = $3
           where club_id = $1 and member_id = $2 and used_at is null and revoked_at is null`,
    values: [db.clubId, memberId, at],
  })
}
