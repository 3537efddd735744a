import { paths, pathTo } from '@espalier/contract/paths'
import { ok } from '@espalier/domain/quantities'
import { afterAll, expect, test } from 'vitest'
import { buildApp } from '../../apps/api/src/app'
import { closePools, openPools } from '../../apps/api/src/db/pool'
import { withClub } from '../../apps/api/src/db/with-club'
import { SEPTEMBER, testDeps } from '../factories/api'
import { makeFurnishedClub, reportOf } from '../factories/furnished-club'
import { asOwner, freshDatabase } from '../support/database'

const database = await freshDatabase()
const { appUrl, identityUrl } = database
const pools = await openPools({ appUrl, identityUrl, appConnections: 4, identityConnections: 2 }, () => {})
const clock = { now: SEPTEMBER }
const deps = testDeps(pools, clock)
const app = await buildApp(deps)
afterAll(async () => {
  await app.close()
  await closePools(pools)
  await database.drop()
})

async function listClubTables(): Promise<readonly string[]> {
  const rows = await asOwner<{ table: string }>(
    database,
    `select c.relname as "table" from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'club_id'
     where c.relkind = 'r' and c.relnamespace = 'public'::regnamespace order by 1`,
  )
  return rows.map(({ table }) => table)
}

/** Tables in which one club, asking without any filter, sees a row of another. */
async function listOpenWalls(clubId: string): Promise<readonly string[]> {
  const open: string[] = []
  for (const table of await listClubTables()) {
    const seen = await withClub(pools, clubId, async (db) => {
      const text = `select count(*)::int as foreign_rows from ${table} where club_id <> $1`
      return ok(await db.sql.rows<{ foreign_rows: number }>({ name: `count-foreign-${table}`, text, values: [clubId] }))
    })
    if (seen.value[0]!.foreign_rows > 0) open.push(table)
  }
  return open
}

test('the database shows a club no row of another, whatever is asked; a dropped policy is noticed', async () => {
  const api = { app, deps, clock }
  const club = await makeFurnishedClub(api)
  const other = await makeFurnishedClub(api)
  const [team] = other.teams
  const operations = [reportOf(team, [other.stageId])]
  await team.coach.person.send('POST', pathTo(paths.operations, { clubId: other.clubId }), { operations })

  const filled = []
  for (const table of await listClubTables()) {
    const [row] = await asOwner<{ rows: number }>(
      database,
      `select count(*)::int as rows from ${table} where club_id = '${other.clubId}'`,
    )
    if (row!.rows > 0) filled.push(table)
  }
  // The other club has rows to be seen in most tables, so that an empty answer means a wall and not an empty table.
  expect(filled.length).toBeGreaterThan(20)
  expect(await listOpenWalls(club.clubId)).toEqual([])

  await asOwner(database, 'drop policy guard on stage_done')
  expect(await listOpenWalls(club.clubId)).toEqual(['stage_done'])
}, 60_000)
