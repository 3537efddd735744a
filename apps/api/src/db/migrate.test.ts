import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, test } from 'vitest'
import { asOwner, freshClubId, freshDatabase, freshId } from '../../../../tests/support/database'
import { withOwner } from '../../../../tests/support/database-cluster'
import { migrate, readMigrations } from './migrate'

const PROJECT = join(import.meta.dirname, '../../../../prisma/migrations')
const LATER = '20991231000000_later'

const cleanups: (() => unknown)[] = []
afterEach(async () => {
  for (const clean of cleanups.splice(0)) await clean()
})

/** A copy of the project's migrations, with others added or put in their place. */
function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'espalier-migrations-'))
  cleanups.push(() => rmSync(folder, { recursive: true }))
  cpSync(PROJECT, folder, { recursive: true })
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, name), { recursive: true })
    writeFileSync(join(folder, name, 'migration.sql'), text)
  }
  return folder
}

async function ownDatabase() {
  const database = await freshDatabase()
  cleanups.push(() => database.drop())
  return database
}

describe('the migration runner', () => {
  test('applies what is new, in order, and nothing twice', async () => {
    const database = await ownDatabase()
    const folder = folderWith({
      [LATER]: 'create table third (club_id uuid primary key)',
      '20991230000000_late': 'create table second (club_id uuid primary key)',
    })
    const run = () => withOwner(database.ownerUrl, (owner) => migrate(owner, readMigrations(folder)))
    expect(await run()).toEqual(['20991230000000_late', LATER])
    expect(await run()).toEqual([])
  })

  test('two runners at once apply each file once', async () => {
    const database = await ownDatabase()
    const folder = folderWith({ [LATER]: 'create table third (club_id uuid primary key); select pg_sleep(0.2)' })
    const run = () => withOwner(database.ownerUrl, (owner) => migrate(owner, readMigrations(folder)))
    expect((await Promise.all([run(), run()])).map((names) => names.length).sort()).toEqual([0, 1])
  })

  test('a file that fails half-way leaves nothing behind and is named', async () => {
    const database = await ownDatabase()
    const folder = folderWith({ [LATER]: 'create table half (club_id uuid primary key); select 1 / 0' })
    await withOwner(database.ownerUrl, async (owner) => {
      await expect(migrate(owner, readMigrations(folder))).rejects.toThrow(`${LATER} failed and left nothing behind`)
      const { rows } = await owner.query("select to_regclass('half') as half, current_user as role")
      expect(rows[0]).toMatchObject({ half: null, role: 'postgres' })
    })
  })

  test('a file altered after it was applied is refused by name', async () => {
    const database = await ownDatabase()
    const altered = readMigrations(PROJECT)[0]!.name
    const folder = folderWith({ [altered]: '-- another text' })
    await withOwner(database.ownerUrl, async (owner) => {
      await expect(migrate(owner, readMigrations(folder))).rejects.toThrow(`${altered} was altered`)
    })
  })

  test('a file that is gone, or that comes before an applied one, is refused by name', async () => {
    const database = await ownDatabase()
    const files = readMigrations(PROJECT)
    const early = '20000101000000_early'
    await withOwner(database.ownerUrl, async (owner) => {
      await expect(migrate(owner, files.slice(0, -1))).rejects.toThrow(`${files.at(-1)!.name} was applied`)
      const withEarly = readMigrations(folderWith({ [early]: 'select 1' }))
      await expect(migrate(owner, withEarly)).rejects.toThrow(`${early} sorts before`)
    })
  })

  test('a back-fill sees the rows of every club; run by an owner behind the wall it would see none', async () => {
    const database = await ownDatabase()
    for (const name of ['One', 'Two']) {
      const values = [freshClubId(), name]
      await asOwner(database, "insert into club (club_id, name, zone, settings) values ($1, $2, 'UTC', '{}')", values)
    }
    const backFill = `
      do $$ declare changed int; begin
        update club set zone = 'Europe/Paris';
        get diagnostics changed = row_count;
        if changed <> 2 then raise 'changed % rows', changed; end if;
      end $$`
    const folder = folderWith({ [LATER]: backFill })
    expect(await withOwner(database.ownerUrl, (owner) => migrate(owner, readMigrations(folder)))).toEqual([LATER])

    // The control: the same statement as an owner without BYPASSRLS, in a database of which that role owns the table.
    await withOwner(database.ownerUrl, async (owner) => {
      const role = `plain_owner_${freshId().slice(-12)}`
      await owner.query(`begin; create role ${role}; grant create, usage on schema public to ${role}`)
      await owner.query(`alter table club owner to ${role}; set local role ${role}`)
      await expect(owner.query(backFill)).rejects.toThrow('changed 0 rows')
      await owner.query('rollback')
    })
  })
})
