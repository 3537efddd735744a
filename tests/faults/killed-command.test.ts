import { ok } from '@espalier/domain/quantities'
import { expect, test } from 'vitest'
import { type Command, type CommandRequest, runCommand } from '../../apps/api/src/commands/run-command'
import { testApi } from '../factories/api'
import { makeClub, type TestClub } from '../factories/club'
import { asOwner, freshId, testDatabase } from '../support/database'
import { withOwner } from '../support/database-cluster'

const api = await testApi()
const database = await testDatabase()

/** A command like any other, with something done to its connection after it has saved. */
function addSeasonThen(seasonId: string, afterSaving: (pid: number) => Promise<unknown>): Command<true> {
  return {
    permission: 'seasons.write',
    find: async () => ({}),
    lock: async () => true,
    target: () => ({}),
    work: async ({ db }) => {
      const text = 'insert into season (club_id, season_id, name, first_day, last_day) values ($1, $2, $3, $4, $5)'
      const values = [db.clubId, seasonId, `Season ${seasonId}`, '2026-09-01', '2026-12-20']
      await db.sql.changed({ name: 'insert-season-of-test', text, values })
      const pids = await db.sql.rows<{ pid: number }>({
        name: 'own-pid',
        text: 'select pg_backend_pid() as pid',
        values: [],
      })
      await afterSaving(pids[0]!.pid)
      const entry = { kind: 'season.added', subjectId: seasonId, facts: {} } as const
      return ok({ status: 201, id: seasonId, version: null, entry })
    },
  }
}

async function requestOf(club: TestClub): Promise<CommandRequest> {
  const text = 'select account_id from membership where club_id = $1 and member_id = $2'
  const rows = await asOwner<{ account_id: string }>(database, text, [club.clubId, club.administratorId])
  const fingerprint = Buffer.alloc(32, 7)
  return { clubId: club.clubId, accountId: rows[0]!.account_id, key: freshId(), fingerprint, ifMatch: undefined }
}

type Traces = { readonly seasons: number; readonly entries: number; readonly claims: number; readonly size: number }

/** Everything that the command would have left. */
async function tracesOf(club: TestClub, seasonId: string, key: string): Promise<Traces> {
  const text = `select (select count(*)::int from season where season_id = $2) as seasons,
      (select count(*)::int from ledger_entry where club_id = $1 and subject_id = $2) as entries,
      (select count(*)::int from idempotency where club_id = $1 and key = $3) as claims,
      (select size::int from ledger_head where club_id = $1) as size`
  return (await asOwner<Traces>(database, text, [club.clubId, seasonId, key]))[0]!
}

const kill = (pid: number) => asOwner(database, 'select pg_terminate_backend($1, 5000)', [pid])

test('a connection killed after the save leaves no effect, no entry and no claim; the same command then succeeds', async () => {
  const club = await makeClub(api)
  const request = await requestOf(club)
  const seasonId = freshId()
  const before = await tracesOf(club, seasonId, request.key)
  await expect(runCommand(api.deps, request, addSeasonThen(seasonId, kill))).rejects.toThrow()
  expect(await tracesOf(club, seasonId, request.key)).toEqual(before)
  expect(before).toMatchObject({ seasons: 0, entries: 0, claims: 0 })

  const again = await runCommand(
    api.deps,
    request,
    addSeasonThen(seasonId, async () => null),
  )
  expect(again).toMatchObject({ ok: true, value: { status: 201, replayed: false } })
  const after = { seasons: 1, entries: 1, claims: 1, size: before.size + 1 }
  expect(await tracesOf(club, seasonId, request.key)).toEqual(after)
})

/** Waits until somebody waits for a lock on that connection. */
async function untilItWaits(pid: number): Promise<void> {
  const text = "select 1 from pg_stat_activity where pid = $1 and wait_event_type = 'Lock'"
  while ((await asOwner(database, text, [pid])).length === 0);
}

test('a connection killed while it waits to write the entry leaves nothing either', async () => {
  const club = await makeClub(api)
  const request = await requestOf(club)
  const seasonId = freshId()
  const before = await tracesOf(club, seasonId, request.key)
  await withOwner(database.ownerUrl, async (holder) => {
    await holder.query('begin')
    await holder.query('select from ledger_head where club_id = $1 for update', [club.clubId])
    let killed = Promise.resolve()
    const killWhenItWaits = async (pid: number) => {
      killed = untilItWaits(pid).then(() => void kill(pid))
    }
    await expect(runCommand(api.deps, request, addSeasonThen(seasonId, killWhenItWaits))).rejects.toThrow()
    await killed
    await holder.query('rollback')
  })
  expect(await tracesOf(club, seasonId, request.key)).toEqual(before)
})

test('control: an effect whose entry is left out is refused by the database at the commit', async () => {
  const club = await makeClub(api)
  const request = await requestOf(club)
  const versionWithoutEntry: Command<true> = {
    permission: 'seasons.write',
    find: async () => ({}),
    lock: async () => true,
    target: () => ({}),
    work: async ({ db, entryId, at, member, newId }) => {
      const curriculumId = newId()
      const text = "insert into curriculum (club_id, curriculum_id, name, age_group) values ($1, $2, 'C', 'U10')"
      await db.sql.changed({ name: 'insert-curriculum-of-test', text, values: [db.clubId, curriculumId] })
      await db.sql.changed({
        name: 'insert-version-of-test',
        text: `insert into curriculum_version (club_id, curriculum_id, number, content, content_hash, check_version,
                 published_by, published_at, entry_id) values ($1, $2, 1, '{}', sha256('{}'), '1', $3, $4, $5)`,
        values: [db.clubId, curriculumId, member.memberId, at, entryId],
      })
      return ok({ status: 201, id: curriculumId, version: 1, entry: null })
    },
  }
  await expect(runCommand(api.deps, request, versionWithoutEntry)).rejects.toMatchObject({ code: '23503' })
})
