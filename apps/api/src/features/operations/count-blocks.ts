import { sessionPlan } from '@espalier/contract/plans'
import type { SessionPlan } from '@espalier/domain/session'
import * as z from 'zod/mini'
import type { ClubDb } from '../../db/with-club'

type BlockCount = {
  readonly playerId: string
  readonly position: string
  readonly side: 'left' | 'right'
  blocks: number
}

/** The plan that a report names, of that evening; null where it names none, or one that has not arrived. */
export async function readPlan(
  db: ClubDb,
  { dateId, planId }: { readonly dateId: string; readonly planId: string | null },
): Promise<SessionPlan | null> {
  if (planId === null) return null
  const plans = await db.sql.rows<{ doc: unknown }>({
    name: 'find-plan',
    text: 'select doc from plan where club_id = $1 and plan_id = $2 and date_id = $3',
    values: [db.clubId, planId, dateId],
  })
  // A plan may arrive after the report on it; then nothing is known of the line-ups.
  return plans[0] === undefined ? null : z.parse(sessionPlan, plans[0].doc)
}

/** Which places each child had, by the plan that was run: line-ups even these out over weeks. A later report counts anew. */
export async function countBlocks(
  db: ClubDb,
  dateId: string,
  plan: SessionPlan,
  squad: ReadonlySet<string>,
): Promise<void> {
  const counts = countPlan(plan).filter(({ playerId }) => squad.has(playerId))
  await db.sql.changed({
    name: 'forget-blocks',
    text: 'delete from player_blocks where club_id = $1 and date_id = $2',
    values: [db.clubId, dateId],
  })
  await db.sql.changed({
    name: 'count-blocks',
    text: `insert into player_blocks (club_id, date_id, player_id, position, side, blocks)
           select $1, $2, player_id, position, side, blocks
           from unnest($3::uuid[], $4::text[], $5::text[], $6::smallint[]) as count (player_id, position, side, blocks)`,
    values: [
      db.clubId,
      dateId,
      counts.map(({ playerId }) => playerId),
      counts.map(({ position }) => position),
      counts.map(({ side }) => side),
      counts.map(({ blocks }) => blocks),
    ],
  })
}

function countPlan(plan: SessionPlan): readonly BlockCount[] {
  const counts = new Map<string, BlockCount>()
  for (const activity of plan.activities) {
    for (const block of activity.lineups?.blocks ?? []) {
      for (const { childId, position } of block.places) {
        const name = `${childId}/${position}/${block.side}`
        const known = counts.get(name) ?? { playerId: childId, position, side: block.side, blocks: 0 }
        known.blocks += 1
        counts.set(name, known)
      }
    }
  }
  return [...counts.values()]
}
