import { paths, pathTo } from '@espalier/contract/paths'
import { expect, test } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { addMember, addSeason, addTeam, makeClub } from '../../../../../tests/factories/club'
import { newSecret } from '../../../../../tests/factories/person'
import { freshId } from '../../../../../tests/support/database'

const api = await testApi()

test('an administrator adds a coach, who signs in by a link and sees the own team only', async () => {
  const club = await makeClub(api)
  const { clubId } = club
  const seasonId = await addSeason(club)
  const teamId = await addTeam(club, seasonId)
  await addTeam(club, seasonId, 'U12 Other', 'us-9v9')
  const coach = await addMember(club, [{ role: 'coach', teamId }], 'Cleo Coach')
  const me = await coach.person.get(paths.me)
  expect(me.json.clubs).toMatchObject([{ clubId, displayName: 'Cleo Coach', roles: [{ role: 'coach', teamId }] }])
  const teams = await coach.person.get(pathTo(paths.teams, { clubId }))
  expect(teams.json.teams.map((team: { teamId: string }) => team.teamId)).toEqual([teamId])
  const all = await club.administrator.get(pathTo(paths.teams, { clubId }))
  expect(all.json.teams).toHaveLength(2)
})

test('a role is refused without its team, with one too many, with an unknown one, and twice, each where it stands', async () => {
  const club = await makeClub(api)
  const roles = [
    { role: 'coach', teamId: null },
    { role: 'auditor', teamId: freshId() },
    { role: 'assistant', teamId: freshId() },
    { role: 'director', teamId: null },
    { role: 'director', teamId: null },
  ]
  const path = pathTo(paths.people, { clubId: club.clubId })
  const answer = await club.administrator.send('POST', path, { id: freshId(), displayName: 'X', roles })
  expect(answer.json).toMatchObject({ status: 400, code: 'bad-request' })
  expect(answer.json.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
    '/roles/0/teamId',
    '/roles/1/teamId',
    '/roles/2/teamId',
    '/roles/4',
  ])
})

test('roles change at once; a stale change is refused with the person that stands', async () => {
  const club = await makeClub(api)
  const { clubId, administrator } = club
  const { person, memberId } = await addMember(club, [{ role: 'director', teamId: null }], 'Dara')
  const path = pathTo(paths.person, { clubId, memberId })
  const asAuditor = { displayName: 'Dara', roles: [{ role: 'auditor', teamId: null }], left: false }
  expect((await administrator.send('PUT', path, asAuditor)).json).toMatchObject({
    status: 428,
    code: 'condition-required',
  })
  expect((await administrator.send('PUT', path, asAuditor, { fromVersion: 1 })).json.version).toBe(2)
  const publish = await person.send('POST', pathTo(paths.patterns, { clubId }), {})
  expect(publish.status).toBe(400)
  const slots = await person.send('POST', pathTo(paths.seasons, { clubId }), {
    id: freshId(),
    name: 'No',
    firstDay: '2026-09-01',
    lastDay: '2026-09-02',
  })
  expect(slots.json).toMatchObject({ status: 403, code: 'not-allowed' })
  const stale = await administrator.send('PUT', path, asAuditor, { fromVersion: 1 })
  expect(stale.json).toMatchObject({
    status: 412,
    code: 'version-is-stale',
    current: { version: 2, document: asAuditor },
  })
})

test('a club keeps an administrator, also when two remove each other at once', async () => {
  const club = await makeClub(api)
  const { clubId } = club
  const other = await addMember(club, [{ role: 'administrator', teamId: null }])
  const path = (memberId: string) => pathTo(paths.person, { clubId, memberId })
  const away = { displayName: 'Away', roles: [], left: true }
  const answers = await Promise.all([
    club.administrator.send('PUT', path(other.memberId), away, { fromVersion: 1 }),
    other.person.send('PUT', path(club.administratorId), away, { fromVersion: 1 }),
  ])
  expect(answers.filter(({ status }) => status === 200)).toHaveLength(1)
  const last = answers[0]!.status === 200 ? club.administrator : other.person
  const lastId = answers[0]!.status === 200 ? club.administratorId : other.memberId
  const refused = await last.send('PUT', path(lastId), { ...away, left: false }, { fromVersion: 1 })
  expect(refused.json).toMatchObject({ status: 422, code: 'last-administrator' })
})

test('a link is made for members only, and its hash is taken once', async () => {
  const club = await makeClub(api)
  const { clubId, administrator } = club
  const { memberId } = await addMember(club, [{ role: 'auditor', teamId: null }])
  const link = { id: freshId(), tokenHash: newSecret().hash.toString('hex') }
  const path = pathTo(paths.signInLinks, { clubId, memberId })
  expect((await administrator.send('POST', path, link)).status).toBe(201)
  const again = await administrator.send('POST', path, { ...link, id: freshId() })
  expect(again.json).toMatchObject({ status: 409, code: 'already-exists', errors: [{ pointer: '/tokenHash' }] })
  const people = (await administrator.get(pathTo(paths.people, { clubId }))).json.people
  expect(people.find((one: { memberId: string }) => one.memberId === memberId).signIn).toBe('has-signed-in')

  const gone = { displayName: 'Gone', roles: [], left: true }
  await administrator.send('PUT', pathTo(paths.person, { clubId, memberId }), gone, { fromVersion: 1 })
  const late = await administrator.send('POST', path, { id: freshId(), tokenHash: newSecret().hash.toString('hex') })
  expect(late.json).toMatchObject({ status: 422, code: 'person-left' })
})
