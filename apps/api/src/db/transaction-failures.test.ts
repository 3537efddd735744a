import { type AddressInfo, connect, createServer } from 'node:net'
import { ok } from '@espalier/domain/quantities'
import { beforeAll, describe, expect, test } from 'vitest'
import { insertClub, makeClub, makeEvening, namesSeen, seasonOf } from '../../../../tests/support/club-makers'
import { freshClubId, freshId, testDatabase, testPools } from '../../../../tests/support/database'
import { OutcomeUnknownError } from './failures'
import { closePools, openPools, type Pools } from './pool'
import { withClub } from './with-club'

let pools: Pools
beforeAll(async () => {
  pools = await testPools()
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
    const clubId = await makeClub(pools, 'Deadlock')
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
    const { clubId, teamId, dateId, seasonId, memberId } = await makeEvening(pools)
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
    expect(await namesSeen(pools, clubId)).toEqual([])
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
    await expect.poll(() => namesSeen(pools, clubId)).toEqual([{ name: 'Perhaps' }])
  })
})

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
