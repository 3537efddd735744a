import { ok, refuse } from '@espalier/domain/quantities'
import { beforeAll, describe, expect, test } from 'vitest'
import { CLUB_NAMES, insertClub, makeClub, namesSeen, seasonOf } from '../../../../tests/support/club-makers'
import {
  asOwner,
  freshClubId,
  freshDatabase,
  freshId,
  testDatabase,
  testPools,
} from '../../../../tests/support/database'
import { clubPrisma } from './club-prisma'
import { constraintOf, sqlStateOf } from './failures'
import { closePools, openPools, type Pools } from './pool'
import { withClub } from './with-club'

let pools: Pools
beforeAll(async () => {
  pools = await testPools()
})

describe('one transaction of one club', () => {
  test('Prisma and plain SQL see the same uncommitted rows, and no other club', async () => {
    await makeClub(pools, 'Other')
    const clubId = freshClubId()
    const seen = await withClub(pools, clubId, async (db) => {
      await insertClub(db, 'Own')
      const byPrisma = await db.prisma.club.findMany({ select: { name: true } })
      await db.prisma.club.update({ where: { clubId }, data: { name: 'Renamed' } })
      return ok({ byPrisma, bySql: await db.sql.rows(CLUB_NAMES) })
    })
    expect(seen.value).toEqual({ byPrisma: [{ name: 'Own' }], bySql: [{ name: 'Renamed' }] })
  })

  test('a refusal rolls back what both have written', async () => {
    const clubId = freshClubId()
    const refused = await withClub(pools, clubId, async (db) => {
      await insertClub(db, 'Never')
      await db.prisma.season.create({ data: seasonOf(clubId) })
      return refuse({ code: 'no' })
    })
    expect(refused).toEqual({ ok: false, refusal: { code: 'no' } })
    expect(await namesSeen(pools, clubId)).toEqual([])
  })

  test('an exception rolls back and passes through', async () => {
    const clubId = freshClubId()
    const failing = withClub(pools, clubId, async (db) => {
      await insertClub(db, 'Never')
      throw new Error('on purpose')
    })
    await expect(failing).rejects.toThrow('on purpose')
    expect(await namesSeen(pools, clubId)).toEqual([])
  })

  test('a row for another club is refused by the wall', async () => {
    const writing = withClub(pools, freshClubId(), async (db) =>
      ok(await db.prisma.club.create({ data: { clubId: freshClubId(), name: 'X', zone: 'UTC', settings: {} } })),
    )
    await expect(writing).rejects.toThrow(/row-level security/)
  })

  test('a database error that the work hides still ends the transaction with that error', async () => {
    const clubId = await makeClub(pools, 'Twice')
    const hiding = withClub(pools, clubId, async (db) => {
      await db.prisma.club.create({ data: { clubId, name: 'X', zone: 'UTC', settings: {} } }).catch(() => null)
      return ok('all well')
    })
    await expect(hiding).rejects.toMatchObject({ code: '23505' })
  })

  test('the work can tell which constraint it met, from Prisma as from SQL', async () => {
    const clubId = await makeClub(pools, 'Twice')
    const met = await withClub(pools, clubId, async (db) => {
      const error = await db.prisma.club
        .create({ data: { clubId, name: 'X', zone: 'UTC', settings: {} } })
        .catch((caught: unknown) => caught)
      return refuse({ code: 'taken', state: sqlStateOf(error), constraint: constraintOf(error) })
    })
    expect(met).toMatchObject({ refusal: { state: '23505', constraint: 'club_pkey' } })
  })

  test('an id that is not strictly a UUID never reaches the database', async () => {
    for (const wrong of ['', "x'; select 1; --", freshClubId().toUpperCase(), `${freshClubId()} `]) {
      await expect(withClub(pools, wrong, async () => ok(1))).rejects.toThrow('club id')
    }
  })

  test('a second transaction inside the first is refused', async () => {
    const nested = withClub(pools, freshClubId(), async () => withClub(pools, freshClubId(), async () => ok(1)))
    await expect(nested).rejects.toThrow('open already')
  })

  test('Prisma may not open a transaction of its own inside', async () => {
    const clubId = await makeClub(pools, 'Nested')
    const writing = withClub(pools, clubId, async (db) =>
      ok(
        await db.prisma.membership.create({
          data: {
            clubId,
            memberId: freshId(),
            accountId: freshId(),
            displayName: 'D',
            memberRoles: { create: [{ memberRoleId: freshId(), role: 'auditor' }] },
          },
        }),
      ),
    )
    await expect(writing).rejects.toThrow('transaction of its own')
  })
})

describe('a query that a request left behind', () => {
  test('is refused after its transaction, also while another club uses the same connection', async () => {
    const [first, second] = [await makeClub(pools, 'First'), await makeClub(pools, 'Second')]
    const one = await oneConnection()
    const late = signal()
    const outcomes: unknown[] = []
    let stray: Promise<void> = Promise.resolve()
    await withClub(one, first, async (db) => {
      stray = late.promise.then(async () => {
        for (const query of [() => db.prisma.club.findMany(), () => db.sql.rows(CLUB_NAMES)]) {
          outcomes.push(await messageOf(query))
        }
      })
      return ok(await db.prisma.club.findMany())
    })
    await withClub(one, second, async (db) => {
      late.resolve()
      await stray
      return ok(await db.prisma.club.findMany())
    })
    await closePools(one)
    expect(outcomes).toEqual(Array(2).fill('a statement ran outside its own transaction'))
  })

  test('is refused where it kept the Prisma client itself', async () => {
    const [first, second] = [await makeClub(pools, 'First'), await makeClub(pools, 'Second')]
    const late = signal()
    let stray: Promise<unknown> = Promise.resolve()
    await withClub(pools, first, async (db) => {
      const kept = db.prisma
      await kept.club.findMany()
      stray = late.promise.then(() => kept.club.findMany().catch((error: Error) => error.message))
      return ok(null)
    })
    await withClub(pools, second, async (db) => {
      await db.prisma.club.findMany()
      late.resolve()
      return ok(await stray)
    })
    expect(await stray).toBe('a statement ran outside its own transaction')
  })

  test('two clubs that ask in the same tick are never answered by one query', async () => {
    const clubs = [await makeClub(pools, 'First'), await makeClub(pools, 'Second')]
    const askTogether = async () => {
      const start = signal()
      let waiting = 0
      const answers = clubs.map((clubId) =>
        withClub(pools, clubId, async (db) => {
          waiting += 1
          if (waiting === clubs.length) start.resolve()
          await start.promise
          return ok((await db.prisma.club.findUnique({ where: { clubId } }))?.clubId ?? null)
        }),
      )
      return (await Promise.all(answers)).map((answer) => answer.value)
    }
    expect(await askTogether()).toEqual(clubs)

    // The control: with Prisma's own gathering on, the second club's row is looked for behind the first club's wall.
    const loader = loaderOf(clubPrisma())
    const apart = loader.batchBy
    loader.batchBy = () => 'together'
    try {
      expect(await askTogether()).not.toEqual(clubs)
    } finally {
      loader.batchBy = apart
    }
  })

  test('many clubs at once over few connections never see each other', async () => {
    const clubs = await Promise.all(Array.from({ length: 12 }, (_, index) => makeClub(pools, `Club ${index}`)))
    const answers = await Promise.all(
      Array.from({ length: 240 }, async (_, index) => {
        const clubId = clubs[index % clubs.length]!
        const wanted = clubs[(index * 7) % clubs.length]!
        const found = await withClub(pools, clubId, async (db) =>
          index % 5 === 0 && index % 2 === 1
            ? refuse({ code: 'given up' })
            : ok(await Promise.all([wanted, clubId].map((id) => db.prisma.club.findUnique({ where: { clubId: id } })))),
        )
        return { clubId, wanted, found }
      }),
    )
    for (const { clubId, wanted, found } of answers) {
      if (!found.ok) continue
      expect(found.value.map((row) => row?.clubId ?? null)).toEqual([wanted === clubId ? clubId : null, clubId])
    }
  })
})

describe('limits of the role', () => {
  test('a statement, a lock and an idle transaction each have an end', async () => {
    const shown = await withClub(pools, freshClubId(), async (db) =>
      ok(
        await db.sql.rows({
          name: 'limits',
          text: `select current_setting('statement_timeout') as statement, current_setting('lock_timeout') as lock,
                   current_setting('idle_in_transaction_session_timeout') as idle,
                   current_setting('transaction_isolation') as isolation`,
          values: [],
        }),
      ),
    )
    expect(shown.value).toEqual([{ statement: '10s', lock: '2s', idle: '15s', isolation: 'read committed' }])
  })
})

describe('the wall', () => {
  test('is what keeps clubs apart: without its policy the same query sees another club', async () => {
    const database = await freshDatabase()
    const settings = { ...database, appConnections: 2, identityConnections: 1 }
    const own = await openPools(settings, () => {})
    const [first, second] = [freshClubId(), freshClubId()]
    for (const clubId of [first, second]) {
      await withClub(own, clubId, async (db) => ok(await insertClub(db, clubId)))
    }
    const see = async () => (await withClub(own, first, async (db) => ok(await db.prisma.club.findMany()))).value
    const walled = (await see()).length
    await asOwner(database, 'drop policy guard on club')
    const open = (await see()).length
    await closePools(own)
    await database.drop()
    expect({ walled, open }).toEqual({ walled: 1, open: 2 })
  })

  test('holds in a connection that has no club set, before and after its first transaction', async () => {
    const one = await oneConnection()
    const before = await one.app.query('select * from club')
    await withClub(one, await makeClub(pools, 'Set'), async () => ok(null))
    const after = await one.app.query('select * from club')
    await closePools(one)
    expect([before.rowCount, after.rowCount]).toEqual([0, 0])
  })
})

async function oneConnection(): Promise<Pools> {
  const { appUrl, identityUrl } = await testDatabase()
  return openPools({ appUrl, identityUrl, appConnections: 1, identityConnections: 1 }, () => {})
}

function loaderOf(prisma: unknown): { batchBy: () => unknown } {
  return (prisma as { _requestHandler: { dataloader: { options: { batchBy: () => unknown } } } })._requestHandler
    .dataloader.options
}

function signal(): { readonly promise: Promise<void>; resolve(): void } {
  let resolve = () => {}
  const promise = new Promise<void>((done) => {
    resolve = done
  })
  return { promise, resolve: () => resolve() }
}

async function messageOf(query: () => Promise<unknown>): Promise<unknown> {
  try {
    return await query()
  } catch (error) {
    return (error as Error).message
  }
}
