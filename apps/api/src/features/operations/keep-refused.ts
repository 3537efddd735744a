import { createCipheriv, randomBytes } from 'node:crypto'
import { ok } from '@espalier/domain/quantities'
import { type ClubDb, withClub } from '../../db/with-club'
import type { Deps, Log } from '../../deps'
import type { Login } from '../../http/logins'

export type RefusedOperation = {
  readonly clubId: string
  readonly login: Login
  readonly operationId: string
  readonly code: string
  readonly raw: unknown
}

/**
 * Keeps what a phone sent and the club refused, so that nothing a coach typed is lost for good; sealed, for it may name
 * guests. A transaction of its own, after the rollback. That it fails changes nothing of the refusal.
 */
export async function keepRefused(deps: Deps, log: Log, refused: RefusedOperation): Promise<void> {
  try {
    await withClub(deps.pools, refused.clubId, async (db) => {
      await db.sql.changed({
        name: 'keep-refused',
        text: `insert into refused (club_id, operation_id, account_id, code, sealed_body, at)
               values ($1, $2, $3, $4, $5, $6) on conflict do nothing`,
        values: [
          db.clubId,
          refused.operationId,
          refused.login.accountId,
          refused.code,
          sealBody(deps, refused),
          new Date(deps.now()),
        ],
      })
      await dropOldest(db, refused.login.accountId)
      return ok(null)
    })
  } catch {
    log.warn({ operation: refused.operationId }, 'a refused operation could not be kept')
  }
}

/** By habit of the project: more than a phone can have waiting in a season, and a bound on what one account can fill. */
export const REFUSED_MAX = 500

async function dropOldest(db: ClubDb, accountId: string): Promise<void> {
  await db.sql.changed({
    name: 'drop-oldest-refused',
    text: `delete from refused where club_id = $1 and operation_id in (
             select operation_id from refused where club_id = $1 and account_id = $2
             order by at desc, operation_id desc offset $3)`,
    values: [db.clubId, accountId, REFUSED_MAX],
  })
}

function sealBody(deps: Deps, refused: RefusedOperation): Buffer {
  const iv = randomBytes(12)
  const cipher = createCipheriv('aes-256-gcm', deps.nameKey, iv)
  cipher.setAAD(Buffer.from(`refused\n${refused.clubId}\n${refused.operationId}`, 'utf8'))
  const text = Buffer.concat([cipher.update(JSON.stringify(refused.raw), 'utf8'), cipher.final()])
  return Buffer.concat([Buffer.from([1]), iv, cipher.getAuthTag(), text])
}
