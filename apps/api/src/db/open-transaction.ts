import { AsyncLocalStorage } from 'node:async_hooks'
import { assert } from '@espalier/domain/quantities'
import type { PoolClient, QueryConfig, QueryResult, QueryResultRow } from 'pg'

/** One transaction of one club on one connection, while it is open. */
export type OpenTransaction = {
  readonly client: PoolClient
  open: boolean
  /** The first error of a statement; PostgreSQL refuses everything after it. */
  failure: unknown
}

// The asynchronous context in which the work of a transaction runs. A query that starts in any other context, such as
// one forgotten by an earlier request, is refused: it would run behind another club's wall.
const transactions = new AsyncLocalStorage<OpenTransaction>()

export function currentTransaction(): OpenTransaction | undefined {
  return transactions.getStore()
}

export function runInside<Value>(transaction: OpenTransaction, work: () => Promise<Value>): Promise<Value> {
  return transactions.run(transaction, work)
}

/** Runs one statement of a transaction, for code that belongs to it and only while it is open. */
export async function runStatement<Row extends QueryResultRow>(
  transaction: OpenTransaction | undefined,
  statement: QueryConfig,
): Promise<QueryResult<Row>> {
  assert(transaction?.open && currentTransaction() === transaction, 'a statement ran outside its own transaction')
  try {
    return await transaction.client.query<Row>(statement)
  } catch (error) {
    transaction.failure ??= error
    throw error
  }
}
