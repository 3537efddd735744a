import { paths, pathTo } from '@espalier/contract/paths'
import { expect, test } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { addMember, makeClub, type TestClub } from '../../../../../tests/factories/club'
import { makePerson, newSecret } from '../../../../../tests/factories/person'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'

const api = await testApi()
const database = await testDatabase()

async function makeLink(club: TestClub, memberId: string) {
  const secret = newSecret()
  const body = { id: freshId(), tokenHash: secret.hash.toString('hex') }
  const path = pathTo(paths.signInLinks, { clubId: club.clubId, memberId })
  expect((await club.administrator.send('POST', path, body)).status).toBe(201)
  return secret.token
}

async function addPersonOnly(club: TestClub): Promise<string> {
  const id = freshId()
  const body = { id, displayName: 'New', roles: [{ role: 'auditor', teamId: null }] }
  expect((await club.administrator.send('POST', pathTo(paths.people, { clubId: club.clubId }), body)).status).toBe(201)
  return id
}

test('twenty presses of one link at once make one login', async () => {
  const club = await makeClub(api)
  const memberId = await addPersonOnly(club)
  const token = await makeLink(club, memberId)
  const people = Array.from({ length: 20 }, () => makePerson(api.app))
  const answers = await Promise.all(people.map((person) => person.signIn(club.clubId, token)))
  expect(answers.filter(({ status }) => status === 201)).toHaveLength(1)
  expect(answers.filter(({ json }) => json.code === 'link-not-valid')).toHaveLength(19)
  const text = `select count(*)::int as count from identity.login l
                join membership m using (account_id) where m.member_id = $1`
  expect(await asOwner(database, text, [memberId])).toEqual([{ count: 1 }])
})

test('the cookie is host-bound, secure, unreadable by scripts, and its token is stored only as a hash', async () => {
  const club = await makeClub(api)
  const person = makePerson(api.app)
  const answer = await person.signIn(club.clubId, await makeLink(club, await addPersonOnly(club)))
  const cookie = String(answer.headers['set-cookie'])
  expect(cookie).toMatch(
    /^__Host-espalier-login=[A-Za-z0-9_-]{43}; Path=\/; Secure; HttpOnly; SameSite=Lax; Max-Age=2592000$/,
  )
  expect(answer.json).toEqual({ clubId: club.clubId })
  const token = cookie.slice(cookie.indexOf('=') + 1, cookie.indexOf(';'))
  const rows = await asOwner(database, "select 1 from identity.login where encode(token_hash, 'escape') like $1", [
    `%${token}%`,
  ])
  expect(rows).toEqual([])
})

test('a link is used once, ends after seven days, and a new one ends the old', async () => {
  const club = await makeClub(api)
  const memberId = await addPersonOnly(club)
  const used = await makeLink(club, memberId)
  expect((await makePerson(api.app).signIn(club.clubId, used)).status).toBe(201)
  expect((await makePerson(api.app).signIn(club.clubId, used)).json.code).toBe('link-not-valid')

  const older = await makeLink(club, memberId)
  const newer = await makeLink(club, memberId)
  expect((await makePerson(api.app).signIn(club.clubId, older)).json.code).toBe('link-not-valid')
  api.clock.now += 7 * 86_400_000
  expect((await makePerson(api.app).signIn(club.clubId, newer)).json.code).toBe('link-not-valid')
  api.clock.now -= 1
  expect((await makePerson(api.app).signIn(club.clubId, newer)).status).toBe(201)
  api.clock.now -= 7 * 86_400_000 - 1
})

test('a wrong token, a wrong club and an unknown club are one and the same refusal', async () => {
  const club = await makeClub(api)
  const other = await makeClub(api)
  const token = await makeLink(club, await addPersonOnly(club))
  for (const [clubId, tried] of [
    [club.clubId, newSecret().token],
    [other.clubId, token],
    [freshId(), token],
  ] as const) {
    const answer = await makePerson(api.app).signIn(clubId, tried)
    expect(answer.json).toMatchObject({ status: 401, code: 'link-not-valid' })
  }
})

test('no GET uses a link up', async () => {
  const club = await makeClub(api)
  const token = await makeLink(club, await addPersonOnly(club))
  for (let at = 0; at < 10; at += 1)
    await api.app.inject({ url: `${paths.logins}?clubId=${club.clubId}&token=${token}` })
  expect((await makePerson(api.app).signIn(club.clubId, token)).status).toBe(201)
})

test('who leaves the club sees nothing of it from the next request on, and their waiting link is dead', async () => {
  const club = await makeClub(api)
  const { person, memberId } = await addMember(club, [{ role: 'director', teamId: null }])
  const waiting = await makeLink(club, memberId)
  const path = pathTo(paths.person, { clubId: club.clubId, memberId })
  const body = { displayName: 'Gone', roles: [], left: true }
  expect((await club.administrator.send('PUT', path, body, { fromVersion: 1 })).status).toBe(200)
  expect((await person.get(pathTo(paths.teams, { clubId: club.clubId }))).status).toBe(401)
  expect((await person.get(paths.me)).status).toBe(401)
  const back = { displayName: 'Back', roles: [{ role: 'director', teamId: null }], left: false }
  expect((await club.administrator.send('PUT', path, back, { fromVersion: 2 })).status).toBe(200)
  expect((await person.get(paths.me)).status).toBe(401)
  expect((await makePerson(api.app).signIn(club.clubId, waiting)).json.code).toBe('link-not-valid')
})

test('a new link ends every login made before it, at once, and none made with it; repeating it ends no more', async () => {
  const club = await makeClub(api)
  const { clubId } = club
  const coach = await addMember(club, [{ role: 'auditor', teamId: null }])
  const other = await addMember(club, [{ role: 'auditor', teamId: null }])
  const secret = newSecret()
  const path = pathTo(paths.signInLinks, { clubId, memberId: coach.memberId })
  const body = { id: freshId(), tokenHash: secret.hash.toString('hex') }
  const key = freshId()
  expect((await coach.person.get(paths.me)).status).toBe(200)
  const made = await club.administrator.send('POST', path, body, { key })
  expect((await coach.person.get(paths.me)).status).toBe(401)
  expect((await other.person.get(paths.me)).status).toBe(200)
  api.clock.now += 1
  const fresh = makePerson(api.app)
  await fresh.signIn(clubId, secret.token)
  expect((await club.administrator.send('POST', path, body, { key })).text).toBe(made.text)
  expect((await fresh.get(paths.me)).status).toBe(200)
  expect((await coach.person.get(paths.me)).status).toBe(401)
})

test('a refused link ends no login', async () => {
  const club = await makeClub(api)
  const { person, memberId } = await addMember(club, [{ role: 'auditor', teamId: null }])
  const path = pathTo(paths.signInLinks, { clubId: club.clubId, memberId })
  const body = { id: freshId(), tokenHash: newSecret().hash.toString('hex') }
  expect((await person.send('POST', path, body)).status).toBe(403)
  expect((await person.get(paths.me)).status).toBe(200)
})

test('signing in ends the login that the browser held before', async () => {
  const club = await makeClub(api)
  const first = await addMember(club, [{ role: 'auditor', teamId: null }])
  const copy = makePerson(api.app)
  copy.cookie = first.person.cookie
  expect((await copy.get(paths.me)).status).toBe(200)
  await first.person.signIn(club.clubId, await makeLink(club, await addPersonOnly(club)))
  expect((await copy.get(paths.me)).status).toBe(401)
  expect((await first.person.get(paths.me)).status).toBe(200)
})
