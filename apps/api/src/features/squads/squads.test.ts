import { paths, pathTo } from '@espalier/contract/paths'
import { accessRules } from '@espalier/domain/access'
import { expect, test } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { addMember, addSeason, addTeam, makeClub } from '../../../../../tests/factories/club'
import { childOf } from '../../../../../tests/factories/furnished-club'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'
import { openName, sealName } from './sealed-names'

const api = await testApi()

async function clubWithTeam(on = api) {
  const club = await makeClub(on)
  const teamId = await addTeam(club, await addSeason(club))
  const { clubId } = club
  return {
    ...club,
    teamId,
    importPath: pathTo(paths.squadImports, { clubId, teamId }),
    squadPath: pathTo(paths.squad, { clubId, teamId }),
  }
}

test('names are sealed in the database, and open for those who may see them', async () => {
  const club = await clubWithTeam()
  const players = [childOf('Quenby', 7), childOf('Øystein', null)]
  const imported = await club.administrator.send('POST', club.importPath, { id: freshId(), players })
  expect(imported.status).toBe(201)
  const squad = (await club.administrator.get(club.squadPath)).json.players
  expect(squad.map((one: { shortName: string }) => one.shortName)).toEqual(['Quenby', 'Øystein'])

  const dump = await asOwner<{ row: string }>(
    await testDatabase(),
    `select encode(name_sealed, 'escape') || to_jsonb(p)::text as row from player p where club_id = $1
     union all select body from ledger_entry where club_id = $1
     union all select coalesce(result::text, '') from idempotency where club_id = $1`,
    [club.clubId],
  )
  expect(dump.length).toBeGreaterThan(3)
  expect(dump.some(({ row }) => row.includes('Quenby'))).toBe(false)

  const { person } = await addMember(club, [{ role: 'assistant', teamId: club.teamId }])
  expect((await person.get(club.squadPath)).json.players[0].shortName).toBe('Quenby')
})

/** Everything that a role is told of a squad of two, with nothing beside it. */
async function whatRolesSee(club: Awaited<ReturnType<typeof clubWithTeam>>) {
  const { teamId } = club
  const roles = [
    { role: 'director', teamId: null },
    { role: 'auditor', teamId: null },
    { role: 'coach', teamId },
    { role: 'assistant', teamId },
  ] as const
  const seen: [string, unknown][] = [['administrator', (await club.administrator.get(club.squadPath)).json]]
  for (const held of roles) {
    const { person } = await addMember(club, [held])
    seen.push([held.role, (await person.get(club.squadPath)).json])
  }
  return new Map(seen)
}

test('a director is told how many, an auditor rows without name and shirt, and nobody more than their role sees', async () => {
  const club = await clubWithTeam()
  const [later, first] = [childOf('Quenby', 9), childOf('Øystein', 4)]
  await club.administrator.send('POST', club.importPath, { id: freshId(), players: [later, first] })
  const full = ({ id, ...kept }: ReturnType<typeof childOf>) => ({ playerId: id, ...kept, version: 1 })
  const shut = (child: ReturnType<typeof childOf>) => ({ ...full(child), shortName: null, shirt: null })
  const byShirt = { count: 2, players: [full(first), full(later)] }
  expect(await whatRolesSee(club)).toEqual(
    new Map<string, unknown>([
      ['administrator', byShirt],
      ['director', { count: 2, players: [] }],
      ['auditor', { count: 2, players: [later, first].sort((a, b) => (a.id < b.id ? -1 : 1)).map(shut) }],
      ['coach', byShirt],
      ['assistant', byShirt],
    ]),
  )
})

test('control: with a rule that gives a director pseudonyms, the rows are there', async () => {
  const pseudonyms = { ...accessRules.permissions['squad.read-pseudonyms'], director: 'club' } as const
  const permissions = { ...accessRules.permissions, 'squad.read-pseudonyms': pseudonyms }
  const club = await clubWithTeam(await testApi({ accessRules: { ...accessRules, permissions } }))
  await club.administrator.send('POST', club.importPath, { id: freshId(), players: [childOf('Quenby', 9)] })
  const seen = (await whatRolesSee(club)).get('director')
  expect(seen).toMatchObject({ count: 1, players: [{ shortName: null, shirt: null }] })
})

test('a squad takes sixty children and no more, whether imported or come back', async () => {
  const club = await clubWithTeam()
  const { clubId, teamId, administrator } = club
  const children = (count: number) => Array.from({ length: count }, () => childOf('Kid', null))
  const sixty = children(60)
  const add = (players: readonly unknown[]) => administrator.send('POST', club.importPath, { id: freshId(), players })
  expect((await add(sixty)).status).toBe(201)
  expect((await add(children(1))).json).toMatchObject({ code: 'squad-row-faults', errors: [{ pointer: '/players/0' }] })
  const { id: playerId, ...edit } = sixty[0]!
  const change = (left: boolean, fromVersion: number) =>
    administrator.send('PUT', pathTo(paths.player, { clubId, teamId, playerId }), { ...edit, left }, { fromVersion })
  expect((await change(true, 1)).status).toBe(200)
  expect((await add(children(2))).json.errors).toMatchObject([{ pointer: '/players/1' }])
  expect((await add(children(1))).status).toBe(201)
  expect((await change(false, 2)).json).toMatchObject({ code: 'squad-row-faults', errors: [{ pointer: '/left' }] })
  expect((await administrator.get(club.squadPath)).json.count).toBe(60)
})

test('an import is all or nothing, and each bad row is pointed at', async () => {
  const club = await clubWithTeam()
  await club.administrator.send('POST', club.importPath, { id: freshId(), players: [childOf('First', 7)] })
  const twin = childOf('Twin', 3)
  const players = [
    childOf('Good', 1),
    childOf('Taken', 7),
    twin,
    { ...childOf('Also', 3), id: twin.id },
    { ...childOf('Same', 9), stretch: 'CM' },
  ]
  const answer = await club.administrator.send('POST', club.importPath, { id: freshId(), players })
  expect(answer.json).toMatchObject({ status: 400, code: 'squad-row-faults' })
  expect(answer.json.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
    '/players/1/shirt',
    '/players/3/shirt',
    '/players/3/id',
    '/players/4/stretch',
  ])
  expect((await club.administrator.get(club.squadPath)).json.players).toHaveLength(1)
})

test('what may not be kept of a child is refused and never stored', async () => {
  const club = await clubWithTeam()
  const players = [{ ...childOf('Good', 1), birthDate: '2016-01-01' }]
  const answer = await club.administrator.send('POST', club.importPath, { id: freshId(), players })
  expect(answer.json).toMatchObject({ status: 400, errors: [{ pointer: '/players/0/birthDate' }] })
})

test('a child changes shirt and leaves; a taken shirt is pointed at, a stale change shows the row that stands', async () => {
  const club = await clubWithTeam()
  const { clubId, teamId, administrator } = club
  const [ada, bo] = [childOf('Ada', 1), childOf('Bo', 2)]
  await administrator.send('POST', club.importPath, { id: freshId(), players: [ada, bo] })
  const path = pathTo(paths.player, { clubId, teamId, playerId: ada.id })
  const { id: _, ...edit } = ada
  const change = (changed: object, fromVersion?: number) =>
    administrator.send(
      'PUT',
      path,
      { ...edit, left: false, ...changed },
      fromVersion === undefined ? {} : { fromVersion },
    )
  expect((await change({ shirt: 9 })).json.code).toBe('condition-required')
  expect((await change({ shirt: 2 }, 1)).json).toMatchObject({ status: 409, errors: [{ pointer: '/shirt' }] })
  expect((await change({ shirt: 9, shortName: 'Adi' }, 1)).json.version).toBe(2)
  const stale = await change({ shirt: 10 }, 1)
  expect(stale.json).toMatchObject({
    status: 412,
    current: { version: 2, document: { shirt: 9, shortName: 'Adi', left: false } },
  })
  expect((await change({ left: true }, 2)).status).toBe(200)
  expect((await administrator.get(club.squadPath)).json.players).toHaveLength(1)
})

test('a sealed name opens for its own child only', () => {
  const subject = { clubId: freshId(), playerId: freshId() }
  const sealed = sealName(api.deps.nameKey, subject, 'Quenby')
  expect(openName(api.deps.nameKey, subject, sealed)).toBe('Quenby')
  expect(() => openName(api.deps.nameKey, { ...subject, playerId: freshId() }, sealed)).toThrow()
  expect(() => openName(api.deps.nameKey, { ...subject, clubId: freshId() }, sealed)).toThrow()
})
