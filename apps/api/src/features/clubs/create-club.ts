import type { ClubSettings } from '@espalier/domain/curriculum'
import { emptyHead } from '@espalier/domain/ledger'
import { ok } from '@espalier/domain/quantities'
import { type ClubDb, withClub } from '../../db/with-club'
import type { Deps } from '../../deps'
import { appendEntry, openBook } from '../../ledger/append-entry'
import { nodeSha256 } from '../../ledger/node-sha256'
import { insertLink } from '../people/links'
import { insertMembership } from '../people/memberships'

export type NewClub = {
  readonly clubId: string
  readonly name: string
  readonly zone: string
  readonly demo: boolean
  readonly administratorName: string
  /** Chosen by who makes the club, where the same person must be found again; else a fresh one. */
  readonly administratorId?: string
  readonly linkTokenHash: Buffer
}

/** Where sources conflict or are silent, a new club starts with these and changes them as it likes. */
export const FIRST_SETTINGS: ClubSettings = {
  v: 1,
  crossingAtRelease: 'when-released',
  penaltyMarkYards7v7: 8,
  coachesAdopt: true,
  adultsRequired: 2,
  welfareOfficer: '',
}

/** An empty club with its record book, its first administrator and that person's one-time link. Nobody is its actor. */
export async function createClub(deps: Deps, club: NewClub): Promise<{ readonly memberId: string }> {
  const memberId = club.administratorId ?? deps.newId()
  const linkId = deps.newId()
  const at = new Date(deps.now())
  await withClub(deps.pools, club.clubId, async (db) => {
    await insertClub(db, club)
    await openBook(db, emptyHead(nodeSha256).root)
    await insertMembership(db, { memberId, accountId: deps.newId(), displayName: club.administratorName })
    await db.sql.changed({
      name: 'insert-first-role',
      text: `insert into member_role (club_id, member_role_id, member_id, role) values ($1, $2, $3, 'administrator')`,
      values: [club.clubId, deps.newId(), memberId],
    })
    await insertLink(db, { linkId, memberId, tokenHash: club.linkTokenHash, madeBy: null, now: at.getTime() })
    const write = (kind: 'club.created' | 'person.added' | 'sign-in-link.made', subject: string, facts = {}) =>
      appendEntry(db, {
        club: club.clubId,
        entry: deps.newId(),
        kind,
        subject,
        actor: null,
        at: at.toISOString(),
        facts,
      })
    await write('club.created', club.clubId, { zone: club.zone, demo: club.demo })
    await write('person.added', memberId, { roles: 'administrator' })
    await write('sign-in-link.made', memberId, { link: linkId })
    return ok(null)
  })
  return { memberId }
}

async function insertClub(db: ClubDb, club: NewClub): Promise<void> {
  await db.sql.changed({
    name: 'insert-club',
    text: 'insert into club (club_id, name, zone, settings, demo) values ($1, $2, $3, $4, $5)',
    values: [club.clubId, club.name, club.zone, JSON.stringify(FIRST_SETTINGS), club.demo],
  })
}
