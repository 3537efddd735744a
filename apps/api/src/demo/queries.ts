import { ok } from '@espalier/domain/quantities'
import { type ClubDb, withClub } from '../db/with-club'
import type { Deps } from '../deps'
import { DEMO_CLUB_ID, demoId } from './ids'
import { TEAMS, type TeamName } from './invented'

/** The first day of the demo's season once it is there: an interrupted making goes on from the same day. */
export async function findBeginning(
  deps: Deps,
): Promise<{ readonly exists: boolean; readonly firstDay: string | null }> {
  return inDemoClub(deps, async (db) => {
    const rows = await db.sql.rows<{ exists: boolean; first_day: string | null }>({
      name: 'find-demo-beginning',
      text: `select exists (select from club where club_id = $1) as exists,
               (select first_day from season where club_id = $1 and season_id = $2) as first_day`,
      values: [DEMO_CLUB_ID, demoId('season')],
    })
    return { exists: rows[0]!.exists, firstDay: rows[0]!.first_day }
  })
}

export type DemoDate = {
  readonly team: TeamName
  readonly dateId: string
  readonly endsAt: number
  readonly reported: boolean
}

/** Evenings of the demo's own slots between two days, the first included and the last not. */
export async function listDemoDates(deps: Deps, from: string, to: string): Promise<readonly DemoDate[]> {
  const slots = TEAMS.flatMap((team) =>
    team.slots.map(({ key }) => ({ team: team.key, slotId: demoId('slot', team.key, key) })),
  )
  return inDemoClub(deps, async (db) => {
    const rows = await db.sql.rows<{ date_id: string; slot_id: string; ends_at: Date; reported: boolean }>({
      name: 'list-demo-dates',
      text: `select d.date_id, d.slot_id, d.ends_at,
               exists (select from record r where r.club_id = d.club_id and r.date_id = d.date_id) as reported
             from training_date d
             where d.club_id = $1 and d.slot_id = any($2) and d.local_date >= $3 and d.local_date < $4
             order by d.ends_at, d.date_id`,
      values: [DEMO_CLUB_ID, slots.map(({ slotId }) => slotId), from, to],
    })
    return rows.map((row) => ({
      team: slots.find(({ slotId }) => slotId === row.slot_id)!.team,
      dateId: row.date_id,
      endsAt: row.ends_at.getTime(),
      reported: row.reported,
    }))
  })
}

async function inDemoClub<Value>(deps: Deps, read: (db: ClubDb) => Promise<Value>): Promise<Value> {
  const found = await withClub(deps.pools, DEMO_CLUB_ID, async (db) => ok(await read(db)))
  return found.value
}
