import { paths, pathTo } from '@espalier/contract/paths'
import { expect, test } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { addMember, addSeason, addTeam, makeClub } from '../../../../../tests/factories/club'

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
