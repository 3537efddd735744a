import { paths, pathTo } from '@espalier/contract/paths'
import { describe, expect, test } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { addMember, addSeason, addTeam, makeClub } from '../../../../../tests/factories/club'
import type { Person } from '../../../../../tests/factories/person'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'

const api = await testApi()
const club = await makeClub(api)
const { clubId } = club
const seasonId = await addSeason(club)
const teamId = await addTeam(club, seasonId)
const otherTeamId = await addTeam(club, seasonId, 'Other team')
const coach = (await addMember(club, [{ role: 'coach', teamId }])).person
const assistant = (await addMember(club, [{ role: 'assistant', teamId }])).person
const director = (await addMember(club, [{ role: 'director', teamId: null }])).person
const otherCoach = (await addMember(club, [{ role: 'coach', teamId: otherTeamId }])).person

const reachOf = (strongFootMm: number, otherFootMm: number, measuredOn = '2026-09-01') => ({
  strongFootMm,
  otherFootMm,
  measuredOn,
})
const put = (person: Person, body: object, fromVersion?: number, id = teamId) =>
  person.send(
    'PUT',
    pathTo(paths.reach, { clubId, teamId: id }),
    body,
    fromVersion === undefined ? {} : { fromVersion },
  )
const readReach = async (person: Person) => (await person.get(pathTo(paths.team, { clubId, teamId }))).json.reach

describe('a team’s reach', () => {
  test('is null until measured, then what coach, assistant and director read, and what the kit carries', async () => {
    expect(await readReach(coach)).toBeNull()
    const kitPath = pathTo(paths.kit, { clubId, teamId })
    expect((await coach.get(kitPath)).json.team.reach).toBeNull()
    expect(await put(coach, reachOf(14_000, 9_000), 0)).toMatchObject({ status: 200, json: { id: teamId, version: 1 } })
    for (const reader of [coach, assistant, director, club.administrator]) {
      expect(await readReach(reader)).toEqual({ ...reachOf(14_000, 9_000), version: 1 })
    }
    // The very next kit carries it, since the measuring stands in the record book.
    expect((await coach.get(kitPath)).json.team.reach).toEqual(reachOf(14_000, 9_000))
  })

  test('measured again by the director replaces the first; the further foot is the strong one', async () => {
    expect((await put(director, reachOf(9_500, 15_000, '2026-09-02'), 1)).status).toBe(200)
    expect(await readReach(coach)).toEqual({ ...reachOf(15_000, 9_500, '2026-09-02'), version: 2 })
  })

  test.each([
    ['nearer than 3 m', reachOf(14_000, 2_999)],
    ['beyond 60 m', reachOf(60_001, 9_000)],
    ['in parts of a millimetre', reachOf(14_000.5, 9_000)],
    ['on a day that has not come', reachOf(14_000, 9_000, '2027-01-01')],
    ['on a day no calendar has', reachOf(14_000, 9_000, '2026-02-30')],
    ['with a child’s result', { ...reachOf(14_000, 9_000), results: [{ shortName: 'Ash', hits: 7 }] }],
  ])('%s is refused, and nothing changes', async (_, body) => {
    expect(await put(coach, body, 2)).toMatchObject({ status: 400, json: { code: 'bad-request' } })
    expect(await readReach(coach)).toMatchObject({ version: 2 })
  })

  test('asks for the version it was measured after; of two at once one is kept', async () => {
    expect(await put(coach, reachOf(14_000, 9_000))).toMatchObject({ status: 428 })
    const stale = await put(coach, reachOf(14_000, 9_000), 1)
    const current = { version: 2, document: { reach: reachOf(15_000, 9_500, '2026-09-02') } }
    expect(stale).toMatchObject({ status: 412, json: { current } })
    const rivals = await Promise.all([coach, director].map((person) => put(person, reachOf(16_000, 10_000), 2)))
    expect(rivals.map(({ status }) => status).toSorted()).toEqual([200, 412])
  })

  test('two first measurings at once: one is kept, and the other is told', async () => {
    const rivals = await Promise.all([20_000, 21_000].map((far) => put(director, reachOf(far, 9_000), 0, otherTeamId)))
    expect(rivals.map(({ status }) => status).toSorted()).toEqual([200, 412])
  })
})

describe('who may not', () => {
  test.each([
    ['an assistant', () => assistant],
    ['an administrator', () => club.administrator],
  ])('%s reads it and is told that writing is not theirs', async (_, personOf) => {
    expect(await put(personOf(), reachOf(14_000, 9_000), 3)).toMatchObject({
      status: 403,
      json: { code: 'not-allowed' },
    })
  })

  test('a coach of another team and one of another club get the answer for a team that is not there; control: the own', async () => {
    const stranger = await makeClub(api)
    const strangerTeam = await addTeam(stranger, await addSeason(stranger))
    const strangerCoach = (await addMember(stranger, [{ role: 'coach', teamId: strangerTeam }])).person
    const missing = await put(otherCoach, reachOf(14_000, 9_000), 3, freshId())
    const { instance: _, ...told } = missing.json
    expect(missing.status).toBe(404)
    for (const person of [otherCoach, strangerCoach]) {
      expect((await put(person, reachOf(14_000, 9_000), 3)).json).toMatchObject(told)
    }
    expect(await readReach(coach)).toMatchObject({ version: 3 })
    expect((await put(otherCoach, reachOf(14_000, 9_000), 1, otherTeamId)).status).toBe(200)
  })
})

describe('no child’s result is kept', () => {
  test('the table holds two lengths, a day and a version of a team, and no other column', async () => {
    const columns = await asOwner<{ name: string }>(
      await testDatabase(),
      `select column_name as name from information_schema.columns where table_name = 'team_reach' order by 1`,
    )
    expect(columns.map(({ name }) => name)).toEqual([
      'club_id',
      'measured_on',
      'other_foot_mm',
      'strong_foot_mm',
      'team_id',
      'version',
    ])
  })

  test('the record book says the same two numbers, for the team’s own readers', async () => {
    const [row] = await asOwner<{ body: string }>(
      await testDatabase(),
      `select body from ledger_entry where club_id = '${clubId}' and kind = 'team-reach.measured' order by seq limit 1`,
    )
    expect(JSON.parse(row!.body)).toMatchObject({
      subject: teamId,
      team: teamId,
      facts: { ...reachOf(14_000, 9_000), version: 1 },
    })
  })
})
