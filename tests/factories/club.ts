import { paths, pathTo } from '@espalier/contract/paths'
import { createClub } from '../../apps/api/src/features/clubs/create-club'
import { freshId } from '../support/database'
import type { TestApi } from './api'
import { type Answer, makePerson, newSecret, type Person } from './person'

export type RoleName = 'administrator' | 'director' | 'coach' | 'assistant' | 'auditor'

export type TestClub = {
  readonly api: TestApi
  readonly clubId: string
  readonly administrator: Person
  readonly administratorId: string
}

/** An empty club, with its administrator signed in. */
export async function makeClub(api: TestApi, name = 'Test club'): Promise<TestClub> {
  const clubId = freshId()
  const secret = newSecret()
  const { memberId } = await createClub(api.deps, {
    clubId,
    name,
    zone: 'Europe/London',
    demo: false,
    administratorName: 'Ada Minster',
    linkTokenHash: secret.hash,
  })
  const administrator = makePerson(api.app)
  expectStatus(await administrator.signIn(clubId, secret.token), 201)
  return { api, clubId, administrator, administratorId: memberId }
}

export function expectStatus(answer: Answer, status: number): Answer {
  if (answer.status !== status) throw new Error(`expected ${status}, got ${answer.status}: ${answer.text}`)
  return answer
}

export type Member = { readonly person: Person; readonly memberId: string }

/** A person of the club, signed in by the link that the administrator made. */
export async function addMember(
  club: TestClub,
  roles: readonly { readonly role: RoleName; readonly teamId: string | null }[],
  displayName = 'Pat Example',
): Promise<Member> {
  const memberId = freshId()
  const { clubId, administrator } = club
  expectStatus(
    await administrator.send('POST', pathTo(paths.people, { clubId }), { id: memberId, displayName, roles }),
    201,
  )
  const person = makePerson(club.api.app)
  await signInAgain(club, memberId, person)
  return { person, memberId }
}

export async function signInAgain(club: TestClub, memberId: string, person: Person): Promise<void> {
  const { clubId, administrator } = club
  const secret = newSecret()
  const link = { id: freshId(), tokenHash: secret.hash.toString('hex') }
  expectStatus(await administrator.send('POST', pathTo(paths.signInLinks, { clubId, memberId }), link), 201)
  expectStatus(await person.signIn(clubId, secret.token), 201)
}

export async function addSeason(club: TestClub, name = 'Autumn'): Promise<string> {
  const id = freshId()
  const body = { id, name, firstDay: '2026-09-01', lastDay: '2026-12-20' }
  expectStatus(await club.administrator.send('POST', pathTo(paths.seasons, { clubId: club.clubId }), body), 201)
  return id
}

export async function addTeam(
  club: TestClub,
  seasonId: string,
  name = 'U10 Test',
  formatId = 'us-7v7',
): Promise<string> {
  const id = freshId()
  const body = { id, seasonId, name, ageGroup: 'U10', category: 'mixed', formatId }
  expectStatus(await club.administrator.send('POST', pathTo(paths.teams, { clubId: club.clubId }), body), 201)
  return id
}
