import { assert } from '@espalier/domain/quantities'
import { PrismaPg } from '@prisma/adapter-pg'
import pg, { type QueryConfig } from 'pg'
import { PrismaClient } from './generated/client'
import { currentTransaction, runStatement } from './open-transaction'

/** Prisma inside a club's transaction: models only. Transactions, raw SQL and connections belong to withClub. */
export type ClubPrisma = Omit<PrismaClient, `$${string}`>

let client: PrismaClient | null = null

/**
 * The one Prisma client of the process. It has no connection of its own: each query goes to the transaction of the
 * asynchronous context that asks, and is refused where there is none. (A client takes 17 MB and 0.1 s to make.)
 */
export function clubPrisma(): ClubPrisma {
  client ??= refuseToGather(new PrismaClient({ adapter: new PrismaPg(poolInForm()), errorFormat: 'minimal' }))
  return client
}

/** A pool as Prisma's adapter asks for one, that never connects. */
function poolInForm(): pg.Pool {
  return Object.assign(new pg.Pool({ max: 1 }), {
    query: (statement: QueryConfig) => runStatement(currentTransaction(), statement),
    connect: () =>
      Promise.reject(
        new Error('Prisma asked for a transaction of its own, but the club has one open: write each row by itself'),
      ),
  })
}

/**
 * Prisma gathers the findUnique calls of one tick into one query, also those of two requests, which would then run in
 * one club's transaction. There is no public switch; a test of two clubs at once fails if this one stops working.
 */
export function refuseToGather(prisma: PrismaClient): PrismaClient {
  const loader = (prisma as unknown as { _requestHandler?: { dataloader?: { options?: { batchBy?: unknown } } } })
    ._requestHandler?.dataloader?.options
  assert(typeof loader?.batchBy === 'function', 'this version of Prisma gathers queries in an unknown way')
  loader.batchBy = () => undefined
  return prisma
}
