import type { ClubDb } from '../../db/with-club'

export type SeasonRow = {
  readonly seasonId: string
  readonly name: string
  readonly firstDay: Date
  readonly lastDay: Date
}

export function listSeasons(db: ClubDb): Promise<readonly SeasonRow[]> {
  return db.prisma.season.findMany({
    where: { clubId: db.clubId },
    orderBy: [{ firstDay: 'asc' }, { seasonId: 'asc' }],
    select: { seasonId: true, name: true, firstDay: true, lastDay: true },
  })
}
