import { ok } from '@espalier/domain/quantities'
import { withClub } from './db/with-club'
import type { Deps } from './deps'
import { listAllClubIds } from './http/logins'

const DAY_MILLISECONDS = 86_400_000

/** Ninety days (habit of the project): longer than a phone lies in a drawer between two seasons. */
export const KEPT_DAYS = 90

/** Forgets stored answers and refused operations that nobody will send again; how many rows went, for the log. */
export async function purgeOld(deps: Pick<Deps, 'pools' | 'now'>): Promise<number> {
  const before = new Date(deps.now() - KEPT_DAYS * DAY_MILLISECONDS)
  let gone = 0
  for (const clubId of await listAllClubIds(deps.pools.identity)) {
    const { value } = await withClub(deps.pools, clubId, async (db) => {
      const answers = await db.sql.changed({
        name: 'purge-idempotency',
        text: 'delete from idempotency where club_id = $1 and at < $2',
        values: [db.clubId, before],
      })
      const refused = await db.sql.changed({
        name: 'purge-refused',
        text: 'delete from refused where club_id = $1 and at < $2',
        values: [db.clubId, before],
      })
      return ok(answers + refused)
    })
    gone += value
  }
  return gone
}

/** Purges now and once a day until it is stopped. A failure is told and waits for the next day: it loses nothing. */
export function purgeDaily(deps: Pick<Deps, 'pools' | 'now'>, tell: (failure: unknown) => void): () => void {
  const purge = () => void purgeOld(deps).catch(tell)
  purge()
  const timer = setInterval(purge, DAY_MILLISECONDS)
  timer.unref()
  return () => clearInterval(timer)
}
