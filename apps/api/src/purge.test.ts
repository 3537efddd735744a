import { paths, pathTo } from '@espalier/contract/paths'
import { expect, test } from 'vitest'
import { SEPTEMBER, testApi } from '../../../tests/factories/api'
import { makeFurnishedClub } from '../../../tests/factories/furnished-club'
import { asOwner, freshId, testDatabase } from '../../../tests/support/database'
import { keepRefused, REFUSED_MAX } from './features/operations/keep-refused'
import { KEPT_DAYS, purgeOld } from './purge'

const api = await testApi()
const database = await testDatabase()
const club = await makeFurnishedClub(api)
const { clubId } = club
const log = api.app.log

async function accountOf(memberId: string): Promise<string> {
  const rows = await asOwner<{ account_id: string }>(
    database,
    'select account_id from membership where member_id = $1',
    [memberId],
  )
  return rows[0]!.account_id
}

async function countRows(table: 'refused' | 'idempotency', accountId: string): Promise<number> {
  const text = `select count(*)::int as count from ${table} where club_id = $1 and account_id = $2`
  return (await asOwner<{ count: number }>(database, text, [clubId, accountId]))[0]!.count
}

test('of the refused operations of one account the newest five hundred are kept, and of others all', async () => {
  const [coach, assistant] = [club.teams[0].coach.memberId, club.teams[0].assistant.memberId]
  const [full, other] = [await accountOf(coach), await accountOf(assistant)]
  await asOwner(
    database,
    `insert into refused (club_id, operation_id, account_id, code, at)
     select $1, gen_random_uuid(), $2, 'bad-request', $3::timestamptz - n * interval '1 second'
     from generate_series(1, $4::int) n`,
    [clubId, full, new Date(SEPTEMBER), REFUSED_MAX],
  )
  const keep = (accountId: string, operationId: string) =>
    keepRefused(api.deps, log, {
      clubId,
      login: { accountId, tokenHash: Buffer.alloc(32) },
      operationId,
      code: 'bad-request',
      raw: { id: operationId },
    })
  const newest = freshId()
  await keep(other, freshId())
  await keep(full, newest)
  expect(await countRows('refused', full)).toBe(REFUSED_MAX)
  expect(await countRows('refused', other)).toBe(1)
  const text = 'select min(at) as oldest, bool_or(operation_id = $2) as newest from refused where account_id = $1'
  expect(await asOwner(database, text, [full, newest])).toEqual([
    { oldest: new Date(SEPTEMBER - (REFUSED_MAX - 1) * 1000), newest: true },
  ])
})

test('answers and refusals go after ninety days and not before; then the thing itself still stands once', async () => {
  const account = await accountOf(club.administratorId)
  const season = { id: freshId(), name: 'Kept', firstDay: '2026-01-01', lastDay: '2026-02-01' }
  const key = freshId()
  const add = () => club.administrator.send('POST', pathTo(paths.seasons, { clubId }), season, { key })
  expect((await add()).status).toBe(201)
  const answers = await countRows('idempotency', account)
  await purgeOld({ pools: api.deps.pools, now: () => SEPTEMBER + KEPT_DAYS * 86_400_000 })
  expect(await countRows('idempotency', account)).toBe(answers)
  expect(await countRows('refused', await accountOf(club.teams[0].assistant.memberId))).toBe(1)
  const gone = await purgeOld({ pools: api.deps.pools, now: () => SEPTEMBER + KEPT_DAYS * 86_400_000 + 1 })
  expect(gone).toBeGreaterThanOrEqual(answers + 1)
  expect(await countRows('idempotency', account)).toBe(0)
  expect(await countRows('refused', await accountOf(club.teams[0].assistant.memberId))).toBe(0)
  expect((await add()).json).toMatchObject({ status: 409, code: 'already-exists' })
})
