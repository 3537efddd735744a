import { ok } from '@espalier/domain/quantities'
import type { Pools } from '../../apps/api/src/db/pool'
import { type ClubDb, withClub } from '../../apps/api/src/db/with-club'
import { freshClubId, freshId } from './database'

export const CLUB_NAMES = { name: 'club-names', text: 'select name from club', values: [] } as const

/** A club of its own for one test. */
export async function makeClub(pools: Pools, name: string): Promise<string> {
  const clubId = freshClubId()
  await withClub(pools, clubId, async (db) => ok(await insertClub(db, name)))
  return clubId
}

export function insertClub(db: ClubDb, name: string): Promise<number> {
  return db.sql.changed({
    name: 'insert-club',
    text: `insert into club (club_id, name, zone, settings) values ($1, $2, 'Europe/Oslo', '{}')`,
    values: [db.clubId, name],
  })
}

export async function namesSeen(pools: Pools, clubId: string): Promise<readonly unknown[]> {
  const seen = await withClub(pools, clubId, async (db) => ok(await db.sql.rows(CLUB_NAMES)))
  return seen.value
}

export function seasonOf(clubId: string, name = 'Spring') {
  return { clubId, seasonId: freshId(), name, firstDay: new Date('2026-01-01'), lastDay: new Date('2026-06-30') }
}

/** A team with one training date and its coach. */
export async function makeEvening(pools: Pools) {
  const clubId = await makeClub(pools, 'Evening')
  const [teamId, dateId, memberId] = [freshId(), freshId(), freshId()]
  const season = seasonOf(clubId)
  await withClub(pools, clubId, async (db) => {
    await db.prisma.season.create({ data: season })
    await db.prisma.membership.create({ data: { clubId, memberId, accountId: freshId(), displayName: 'Coach' } })
    const team = { name: 'U10', ageGroup: 'U10', category: 'mixed', formatId: 'ussf-7v7' }
    await db.prisma.team.create({ data: { clubId, teamId, seasonId: season.seasonId, ...team } })
    const times = { startsAt: new Date('2026-03-03T17:00Z'), endsAt: new Date('2026-03-03T18:15Z') }
    const days = { localDate: new Date('2026-03-03'), week: new Date('2026-03-02'), state: 'on' }
    await db.prisma.trainingDate.create({
      data: { clubId, dateId, teamId, seasonId: season.seasonId, ...times, ...days },
    })
    return ok(null)
  })
  return { clubId, teamId, dateId, memberId, seasonId: season.seasonId }
}
