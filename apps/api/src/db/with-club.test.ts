import { type AddressInfo, connect, createServer } from 'node:net'
import { ok, refuse } from '@espalier/domain/quantities'
import { beforeAll, describe, expect, test } from 'vitest'
import {
  asOwner,
  freshClubId,
  freshDatabase,
  freshId,
  testDatabase,
  testPools,
} from '../../../../tests/support/database'
import { clubPrisma } from './club-prisma'
import { constraintOf, OutcomeUnknownError, sqlStateOf } from './failures'
import { closePools, openPools, type Pools } from './pool'
import { type ClubDb, withClub } from './with-club'

let pools: Pools
beforeAll(async () => {
  pools = await testPools()
})

const CLUB_NAMES = { name: 'club-names', text: 'select name from club', values: [] } as const

async function makeClub(name: string): Promise<string> {
  const clubId = freshClubId()
  await withClub(pools, clubId, async (db) => ok(await insertClub(db, name)))
  return clubId
}

function insertClub(db: ClubDb, name: string): Promise<number> {
  return db.sql.changed({
    name: 'insert-club',
    text: `insert into club (club_id, name, zone, settings) values ($1, $2, 'Europe/Oslo', '{}')`,
    values: [db.clubId, name],
  })
}

async function namesSeen(clubId: string): Promise<readonly unknown[]> {
  const seen = await withClub(pools, clubId, async (db) => ok(await db.sql.rows(CLUB_NAMES)))
  return seen.value
}

describe('one transaction of one club', () => {
  test('Prisma and plain SQL see the same uncommitted rows, and no other club', async () => {
    await makeClub('Other')
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
    expect(await namesSeen(clubId)).toEqual([])
  })

  test('an exception rolls back and passes through', async () => {
    const clubId = freshClubId()
    const failing = withClub(pools, clubId, async (db) => {
      await insertClub(db, 'Never')
      throw new Error('on purpose')
    })
    await expect(failing).rejects.toThrow('on purpose')
    expect(await namesSeen(clubId)).toEqual([])
  })

  test('a row for another club is refused by the wall', async () => {
    const writing = withClub(pools, freshClubId(), async (db) =>
      ok(await db.prisma.club.create({ data: { clubId: freshClubId(), name: 'X', zone: 'UTC', settings: {} } })),
    )
    await expect(writing).rejects.toThrow(/row-level security/)
  })

  test('a database error that the work hides still ends the transaction with that error', async () => {
    const clubId = await makeClub('Twice')
    const hiding = withClub(pools, clubId, async (db) => {
      await db.prisma.club.create({ data: { clubId, name: 'X', zone: 'UTC', settings: {} } }).catch(() => null)
      return ok('all well')
    })
    await expect(hiding).rejects.toMatchObject({ code: '23505' })
  })

  test('the work can tell which constraint it met, from Prisma as from SQL', async () => {
    const clubId = await makeClub('Twice')
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
    const clubId = await makeClub('Nested')
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
    const [first, second] = [await makeClub('First'), await makeClub('Second')]
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
    const [first, second] = [await makeClub('First'), await makeClub('Second')]
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
    const clubs = [await makeClub('First'), await makeClub('Second')]
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
    const clubs = await Promise.all(Array.from({ length: 12 }, (_, index) => makeClub(`Club ${index}`)))
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

describe('conflicts and lost connections', () => {
  test('a serialization failure is repeated until it passes, and at most three times', async () => {
    let runs = 0
    const conflict = { name: 'conflict', text: `do $$ begin raise sqlstate '40001'; end $$`, values: [] }
    const passing = await withClub(pools, freshClubId(), async (db) => {
      runs += 1
      if (runs < 3) await db.sql.rows(conflict)
      return ok(runs)
    })
    expect(passing.value).toBe(3)
    runs = 0
    const failing = withClub(pools, freshClubId(), async (db) => {
      runs += 1
      return ok(await db.sql.rows(conflict))
    })
    await expect(failing).rejects.toMatchObject({ code: '40001' })
    expect(runs).toBe(4)
  })

  test('a deadlock between two writers ends with both done', async () => {
    const clubId = await makeClub('Deadlock')
    const seasons = [seasonOf(clubId, 'A'), seasonOf(clubId, 'B')]
    await withClub(pools, clubId, async (db) => ok(await db.prisma.season.createMany({ data: seasons })))
    const touch = (order: readonly number[]) =>
      withClub(pools, clubId, async (db) => {
        for (const index of order) {
          await db.sql.changed({
            name: 'touch-season',
            text: 'update season set version = version + 1 where club_id = $1 and season_id = $2',
            values: [clubId, seasons[index]!.seasonId],
          })
          await db.sql.rows({ name: 'short-wait', text: 'select pg_sleep(0.1)', values: [] })
        }
        return ok(null)
      })
    await Promise.all([touch([0, 1]), touch([1, 0])])
    const versions = await withClub(pools, clubId, async (db) =>
      ok(await db.prisma.season.findMany({ select: { version: true } })),
    )
    expect(versions.value).toEqual([{ version: 3 }, { version: 3 }])
  })

  test('an effect without its entry in the record book is refused at commit', async () => {
    const { clubId, teamId, dateId, seasonId, memberId } = await makeEvening()
    const reporting = withClub(pools, clubId, async (db) =>
      ok(
        await db.prisma.record.create({
          data: {
            ...{ clubId, recordId: freshId(), dateId, teamId, seasonId, week: new Date('2026-03-02') },
            ...{ turnout: 8, minutes: 60, authorId: memberId, reportedLate: false, standing: 'stands', doc: {} },
            entryId: freshId(),
          },
        }),
      ),
    )
    await expect(reporting).rejects.toMatchObject({ code: '23503', constraint: 'record_club_id_entry_id_fkey' })
  })

  test('a connection lost before COMMIT fails, leaves nothing, and the pool goes on', async () => {
    const clubId = freshClubId()
    const losing = withClub(pools, clubId, async (db) => {
      await insertClub(db, 'Lost')
      await db.sql.rows({ name: 'end-self', text: 'select pg_terminate_backend(pg_backend_pid())', values: [] })
      return ok(null)
    })
    await expect(losing).rejects.toMatchObject({ code: '57P01' })
    expect(await namesSeen(clubId)).toEqual([])
  })

  test('a connection lost at COMMIT is an unknown outcome, never a failure', async () => {
    const { appUrl, identityUrl } = await testDatabase()
    const proxy = await proxyThatDropsCommits(new URL(appUrl))
    const settings = { appUrl: proxy.url, identityUrl, appConnections: 1, identityConnections: 1 }
    const dropped = await openPools(settings, () => {})
    const clubId = freshClubId()
    const losing = withClub(dropped, clubId, async (db) => ok(await insertClub(db, 'Perhaps')))
    await expect(losing).rejects.toBeInstanceOf(OutcomeUnknownError)
    await closePools(dropped)
    proxy.close()
    // This time it did commit; the client learns so by repeating its command.
    await expect.poll(() => namesSeen(clubId)).toEqual([{ name: 'Perhaps' }])
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
    await withClub(one, await makeClub('Set'), async () => ok(null))
    const after = await one.app.query('select * from club')
    await closePools(one)
    expect([before.rowCount, after.rowCount]).toEqual([0, 0])
  })
})

function seasonOf(clubId: string, name = 'Spring') {
  return { clubId, seasonId: freshId(), name, firstDay: new Date('2026-01-01'), lastDay: new Date('2026-06-30') }
}

async function makeEvening() {
  const clubId = await makeClub('Evening')
  const [teamId, dateId, memberId] = [freshId(), freshId(), freshId()]
  const season = seasonOf(clubId)
  await withClub(pools, clubId, async (db) => {
    await db.prisma.season.create({ data: season })
    await db.prisma.membership.create({ data: { clubId, memberId, accountId: freshId(), displayName: 'Coach' } })
    const team = { name: 'U10', ageGroup: 'U10', category: 'mixed', formatId: 'ussf-7v7' }
    await db.prisma.team.create({ data: { clubId, teamId, seasonId: season.seasonId, ...team } })
    const times = { startsAt: new Date('2026-03-03T17:00Z'), endsAt: new Date('2026-03-03T18:15Z') }
    const days = { localDate: new Date('2026-03-03'), week: new Date('2026-03-02'), state: 'on' }
    await db.prisma.trainingDate.create({
      data: { clubId, dateId, teamId, seasonId: season.seasonId, ...times, ...days },
    })
    return ok(null)
  })
  return { clubId, teamId, dateId, memberId, seasonId: season.seasonId }
}

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

/** Passes everything on to the database, but hangs up as soon as a COMMIT has gone through. */
async function proxyThatDropsCommits(target: URL) {
  const server = createServer((incoming) => {
    const outgoing = connect(Number(target.port), target.hostname)
    incoming.on('error', () => {})
    outgoing.on('error', () => {})
    outgoing.pipe(incoming)
    incoming.on('data', (chunk) => {
      outgoing.write(chunk)
      if (chunk.includes('commit\0')) incoming.destroy()
    })
    incoming.on('end', () => outgoing.end())
  })
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
  const url = new URL(target)
  url.port = String((server.address() as AddressInfo).port)
  return { url: url.href, close: () => server.close() }
}
