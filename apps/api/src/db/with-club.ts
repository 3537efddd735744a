import { setTimeout as pause } from 'node:timers/promises'
import { assert, type Result } from '@espalier/domain/quantities'
import type { PoolClient, QueryResultRow } from 'pg'
import { type ClubPrisma, clubPrisma } from './club-prisma'
import { isRepeatable, isUnavailable, OutcomeUnknownError } from './failures'
import { Prisma } from './generated/client'
import { currentTransaction, type OpenTransaction, runInside, runStatement } from './open-transaction'
import type { Pools } from './pool'

/** A statement written by hand: its name is unique to its text, and is prepared once a connection. */
export type Statement = { readonly name: string; readonly text: string; readonly values: readonly unknown[] }

export type ClubSql = {
  readonly rows: <Row extends QueryResultRow>(statement: Statement) => Promise<readonly Row[]>
  /** How many rows the statement changed. */
  readonly changed: (statement: Statement) => Promise<number>
}

/** The database as one club sees it, inside one transaction. It comes only from withClub. */
export type ClubDb = { readonly clubId: string; readonly sql: ClubSql; readonly prisma: ClubPrisma }

// A conflict with another transaction is repeated at once and then twice more, a little later each time.
const REPEATS = 3
const PAUSE_MILLISECONDS = 8

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/

/**
 * Runs `work` in one transaction that sees one club. Prisma and plain SQL share it. A refusal or an exception rolls
 * back, anything else commits. Work may run again after a conflict, so it must change nothing but the database.
 */
export async function withClub<Outcome extends Result<unknown, { readonly code: string }>>(
  pools: Pick<Pools, 'app'>,
  clubId: string,
  work: (db: ClubDb) => Promise<Outcome>,
): Promise<Outcome> {
  assert(UUID.test(clubId), 'a club id must be a lower-case UUID')
  assert(!currentTransaction()?.open, 'a club transaction is open already')
  for (let attempt = 0; ; attempt += 1) {
    const done = await attemptOnce(pools, clubId, work)
    if ('outcome' in done) return done.outcome
    if (attempt === REPEATS || !isRepeatable(done.failure)) throw done.failure
    await pause(attempt * PAUSE_MILLISECONDS)
  }
}

type Attempt<Outcome> = { readonly outcome: Outcome } | { readonly failure: unknown }

async function attemptOnce<Outcome extends Result<unknown, { readonly code: string }>>(
  pools: Pick<Pools, 'app'>,
  clubId: string,
  work: (db: ClubDb) => Promise<Outcome>,
): Promise<Attempt<Outcome>> {
  const client = await pools.app.connect()
  const transaction: OpenTransaction = { client, open: true, failure: null }
  let broken = false
  // Without a listener the loss of a connection would end the process; the statement in flight tells of it anyway.
  const noteLoss = () => {
    broken = true
  }
  client.on('error', noteLoss)
  try {
    // One round trip. The statement, and not set_config, because its effect ends with the transaction by definition.
    await client.query(`begin isolation level read committed; set local app.club_id = '${clubId}'`)
    const outcome = await runInside(transaction, () => work(clubDb(clubId, transaction)))
    transaction.open = false
    if (outcome.ok) await commit(transaction)
    else await client.query('rollback')
    return { outcome }
  } catch (error) {
    transaction.open = false
    broken ||= !(await rolledBack(client, error))
    return { failure: databaseErrorOf(error, transaction) }
  } finally {
    client.off('error', noteLoss)
    client.release(broken)
  }
}

function clubDb(clubId: string, transaction: OpenTransaction): ClubDb {
  const run = <Row extends QueryResultRow>({ name, text, values }: Statement) =>
    runStatement<Row>(transaction, { name, text, values: [...values] })
  return {
    clubId,
    prisma: clubPrisma(),
    sql: {
      rows: async <Row extends QueryResultRow>(statement: Statement) => (await run<Row>(statement)).rows,
      changed: async (statement) => (await run(statement)).rowCount ?? 0,
    },
  }
}

async function commit(transaction: OpenTransaction): Promise<void> {
  try {
    const { command } = await transaction.client.query('commit')
    // After a failed statement PostgreSQL answers COMMIT with ROLLBACK: work that swallowed the error must not pass.
    if (command !== 'COMMIT') throw transaction.failure ?? new Error('the transaction was rolled back')
  } catch (error) {
    if (!isUnavailable(error)) throw error
    throw new OutcomeUnknownError('the connection was lost during COMMIT', { cause: error })
  }
}

/** What PostgreSQL said, where Prisma said it in words of its own. */
function databaseErrorOf(error: unknown, transaction: OpenTransaction): unknown {
  return error instanceof Prisma.PrismaClientKnownRequestError ? (transaction.failure ?? error) : error
}

/** Rolls back after an error; false where the connection can no longer be used. */
async function rolledBack(client: PoolClient, error: unknown): Promise<boolean> {
  if (isUnavailable(error) || error instanceof OutcomeUnknownError) return false
  return client.query('rollback').then(
    () => true,
    () => false,
  )
}
