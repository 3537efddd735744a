import { PrismaPg } from '@prisma/adapter-pg'
import pg, { type PoolClient, type QueryConfig } from 'pg'
import { PrismaClient } from './generated/client'
import { runStatement } from './open-transaction'

/** Prisma inside a club's transaction: models only. Transactions, raw SQL and connections belong to withClub. */
export type ClubPrisma = Omit<PrismaClient, `$${string}` | '_'>

// One Prisma client a connection: Prisma gathers findUnique calls of one client into one query, and no two requests
// hold the same connection at once, so it can never gather those of two clubs.
const clients = new WeakMap<PoolClient, PrismaClient>()

/** The Prisma client that speaks through this connection, and only inside its open transaction. */
export function boundPrisma(client: PoolClient): ClubPrisma {
  const known = clients.get(client)
  if (known) return known
  const bound = new PrismaClient({ adapter: new PrismaPg(onlyThrough(client)), errorFormat: 'minimal' })
  clients.set(client, bound)
  return bound
}

/** A pool in form, as Prisma's adapter asks for one, that never connects: each query goes to the one connection. */
function onlyThrough(client: PoolClient): pg.Pool {
  return Object.assign(new pg.Pool({ max: 1 }), {
    query: (statement: QueryConfig) => runStatement(client, statement),
    connect: () =>
      Promise.reject(
        new Error('this needs a transaction of its own, and the club has one open: use single statements'),
      ),
  })
}
