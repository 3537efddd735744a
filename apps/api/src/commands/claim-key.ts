import { ok, type Result, refuse } from '@espalier/domain/quantities'
import type { ClubDb } from '../db/with-club'
import type { Refusal } from '../http/problem-error'

/** What a command answers, and all that is stored of the answer. */
export type CommandOutcome = {
  readonly status: 200 | 201
  readonly id: string
  readonly version: number | null
  readonly entry: string | null
}

export type Claim = {
  readonly accountId: string
  readonly key: string
  readonly fingerprint: Buffer
  readonly at: Date
}

type StoredRow = {
  readonly fingerprint: Buffer
  readonly status: 200 | 201 | null
  readonly result: Omit<CommandOutcome, 'status'> | null
}

/** Null: the key is ours now and the command may run. Otherwise the stored answer of the same command done earlier. */
export async function claimKey(db: ClubDb, claim: Claim): Promise<Result<CommandOutcome | null, Refusal>> {
  const claimed = await insertClaim(db, claim)
  if (claimed) return ok(null)
  const answer = await findAnswer(db, claim)
  // Neither ours nor answered: the first sending has not ended yet.
  return answer.ok && answer.value === null ? refuse({ code: 'still-running' }) : answer
}

/** The stored answer of the same command done earlier, or null where there is none; read without a lock. */
export async function findAnswer(
  db: ClubDb,
  claim: Pick<Claim, 'accountId' | 'key' | 'fingerprint'>,
): Promise<Result<CommandOutcome | null, Refusal>> {
  const rows = await db.sql.rows<StoredRow>({
    name: 'find-claim',
    text: 'select fingerprint, status, result from idempotency where club_id = $1 and account_id = $2 and key = $3',
    values: [db.clubId, claim.accountId, claim.key],
  })
  const stored = rows[0]
  if (stored === undefined || stored.status === null || stored.result === null) return ok(null)
  if (!stored.fingerprint.equals(claim.fingerprint)) return refuse({ code: 'key-used-for-another-command' })
  return ok({ status: stored.status, ...stored.result })
}

async function insertClaim(db: ClubDb, claim: Claim): Promise<boolean> {
  const inserted = await db.sql.changed({
    name: 'claim-key',
    text: `insert into idempotency (club_id, account_id, key, fingerprint, at) values ($1, $2, $3, $4, $5)
           on conflict do nothing`,
    values: [db.clubId, claim.accountId, claim.key, claim.fingerprint, claim.at],
  })
  return inserted === 1
}

export async function fillClaim(db: ClubDb, claim: Claim, outcome: CommandOutcome): Promise<void> {
  const { status, ...result } = outcome
  await db.sql.changed({
    name: 'fill-claim',
    text: 'update idempotency set status = $4, result = $5 where club_id = $1 and account_id = $2 and key = $3',
    values: [db.clubId, claim.accountId, claim.key, status, JSON.stringify(result)],
  })
}
