import { PrismaPg } from '@prisma/adapter-pg'
import pg, { type QueryConfig } from 'pg'
import { PrismaClient } from './generated/client'
import { type OpenTransaction, runStatement } from './open-transaction'

/** Prisma inside a club's transaction: models only. Transactions, raw SQL and connections belong to withClub. */
export type ClubPrisma = Omit<PrismaClient, `$${string}`>

type Lease = { readonly prisma: PrismaClient; holder: OpenTransaction | null }

// Prisma gathers the findUnique calls of one client into one query. Each client therefore serves one transaction at a
// time, so that it can never gather those of two clubs. The latest is leased again first: there are only as many as
// transactions that used Prisma at the same time (each takes about 17 MB and 0.1 s to make).
const idle: Lease[] = []

/** Leases a Prisma client that speaks through this transaction's connection; give it back when the transaction ends. */
export function leasePrisma(transaction: OpenTransaction): { readonly prisma: ClubPrisma; giveBack(): void } {
  const lease = idle.pop() ?? createLease()
  lease.holder = transaction
  return {
    prisma: lease.prisma,
    giveBack: () => {
      lease.holder = null
      idle.push(lease)
    },
  }
}

function createLease(): Lease {
  const lease: { prisma: PrismaClient | null; holder: OpenTransaction | null } = { prisma: null, holder: null }
  // A pool in form, as Prisma's adapter asks for one, that never connects: each query goes to the holder's connection.
  const pool = Object.assign(new pg.Pool({ max: 1 }), {
    query: (statement: QueryConfig) => runStatement(lease.holder, statement),
    connect: () =>
      Promise.reject(
        new Error('Prisma asked for a transaction of its own, but the club has one open: write each row by itself'),
      ),
  })
  return Object.assign(lease, { prisma: new PrismaClient({ adapter: new PrismaPg(pool), errorFormat: 'minimal' }) })
}
