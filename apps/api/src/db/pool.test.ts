import { describe, expect, test } from 'vitest'
import { asOwner, freshDatabase, testDatabase, testPools } from '../../../../tests/support/database'
import { closePools, openPools, UnsafeRoleError } from './pool'

const few = { appConnections: 1, identityConnections: 1 }

describe('the pools', () => {
  test('open as espalier_app and espalier_identity, which own nothing and pass no wall', async () => {
    const pools = await testPools()
    const role = async (pool: typeof pools.app) => (await pool.query('select current_user as role')).rows[0].role
    expect([await role(pools.app), await role(pools.identity)]).toEqual(['espalier_app', 'espalier_identity'])
  })

  test('neither reads what is the other’s', async () => {
    const pools = await testPools()
    await expect(pools.app.query('select * from identity.login')).rejects.toThrow('permission denied')
    await expect(pools.identity.query('select * from public.club')).rejects.toThrow('permission denied')
  })

  test('refuse a superuser, a role that passes row security, one that owns a table, and one that may become such', async () => {
    const database = await freshDatabase()
    const [{ name }] = (await asOwner(database, 'select current_database() as name')) as [{ name: string }]
    const strong = {
      superuser: 'superuser',
      bypass: 'bypassrls',
      owner: '',
      member: 'in role espalier_migrate noinherit',
    }
    const refusals: Record<string, string> = {}
    for (const [kind, attributes] of Object.entries(strong)) {
      const role = `${name}_${kind}`.slice(0, 60)
      await asOwner(database, `create role ${role} login password 'strong-enough' ${attributes}`)
      await asOwner(database, `grant connect on database ${name} to ${role}`)
      if (kind === 'owner') await asOwner(database, `create table owned (); alter table owned owner to ${role}`)
      const url = new URL(database.appUrl)
      url.username = role
      url.password = 'strong-enough'
      const opening = openPools({ ...few, appUrl: url.href, identityUrl: database.identityUrl }, () => {})
      refusals[kind] = await opening.then(
        async (pools) => {
          await closePools(pools)
          return 'opened'
        },
        (error) => (error instanceof UnsafeRoleError ? error.message.replace(role, 'it') : String(error)),
      )
    }
    await asOwner(database, 'drop table owned')
    for (const kind of Object.keys(strong)) {
      const role = `${name}_${kind}`.slice(0, 60)
      await asOwner(database, `revoke all on database ${name} from ${role}`)
      await asOwner(database, `drop role ${role}`)
    }
    await database.drop()
    expect(refusals).toEqual({
      superuser: expect.stringContaining('it is a superuser'),
      bypass: expect.stringContaining('it passes row security'),
      owner: expect.stringContaining('it owns tables'),
      member: expect.stringContaining('it passes row security'),
    })
  })

  test('give dates as text and bigints as safe numbers, and refuse a number that is not safe', async () => {
    const pools = await testPools()
    const { rows } = await pools.app.query("select date '2026-03-29' as day, 9007199254740991::bigint as big")
    expect(rows[0]).toEqual({ day: '2026-03-29', big: 9007199254740991 })
    await expect(pools.app.query('select 9007199254740993::bigint as big')).rejects.toThrow('safe integer')
  })

  test('a wrong password fails at the start, not at the first request', async () => {
    const { appUrl, identityUrl } = await testDatabase()
    const wrong = appUrl.replace(/:[^:@]+@/, ':wrong@')
    await expect(openPools({ ...few, appUrl: wrong, identityUrl }, () => {})).rejects.toThrow('password')
  })
})
