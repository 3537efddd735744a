import { paths, pathTo } from '@espalier/contract/paths'
import { describe, expect, test } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { addMember, addSeason, addTeam, makeClub } from '../../../../../tests/factories/club'
import { freshId } from '../../../../../tests/support/database'

const api = await testApi()
const club = await makeClub(api)
const { clubId, administrator } = club
const teamId = await addTeam(club, await addSeason(club))
const path = pathTo(paths.equipment, { clubId })

const counts = (cone: number) => ({ cone, pole: 2, 'small-goal': 1, ball: 6, bib: 0 })
const count = (owner: string | null, cone: number, fromVersion?: number, key = freshId()) =>
  administrator.send(
    'POST',
    path,
    { id: freshId(), teamId: owner, counts: counts(cone) },
    { key, ...(fromVersion === undefined ? {} : { fromVersion }) },
  )
const listOwners = async () => (await administrator.get(path)).json.owners

describe.each([
  ['the club’s store', () => null],
  ['a team’s bag', () => teamId],
])('%s', (_, ownerOf) => {
  const find = async () =>
    (await listOwners()).find((owner: { teamId: string | null }) => owner.teamId === ownerOf()) ?? null

  test('is counted from the version that was seen: none at first, then the one of the last count', async () => {
    expect(await find()).toBeNull()
    expect((await count(ownerOf(), 10, 0)).json).toMatchObject({ version: 1 })
    expect((await count(ownerOf(), 11, 1)).json).toMatchObject({ version: 2 })
    expect(await find()).toEqual({ teamId: ownerOf(), counts: counts(11), version: 2 })
  })

  test('without a version is refused, and from an older one gets what stands now and changes nothing', async () => {
    expect(await count(ownerOf(), 50)).toMatchObject({ status: 428, json: { code: 'condition-required' } })
    const stale = await count(ownerOf(), 50, 1)
    expect(stale.status).toBe(412)
    expect(stale.json).toMatchObject({
      code: 'version-is-stale',
      current: { version: 2, document: { counts: counts(11) } },
    })
    expect(await find()).toMatchObject({ counts: counts(11), version: 2 })
  })

  test('counted by two at once is counted by one of them', async () => {
    const answers = await Promise.all([12, 13, 14].map((cone) => count(ownerOf(), cone, 2)))
    expect(answers.map(({ status }) => status).toSorted()).toEqual([200, 412, 412])
    expect(await find()).toMatchObject({ version: 3 })
  })
})

test('two first counts of one bag at once: one is kept, and the other is told', async () => {
  const other = await addTeam(club, await addSeason(club, 'Another'), 'Another')
  const answers = await Promise.all([count(other, 1, 0), count(other, 2, 0)])
  expect(answers.map(({ status }) => status).toSorted()).toEqual([200, 412])
})

test('a count sent again after a lost answer is the same count', async () => {
  const body = { id: freshId(), teamId: null, counts: counts(20) }
  const [key, fromVersion] = [freshId(), 3]
  const first = await administrator.send('POST', path, body, { key, fromVersion })
  const again = await administrator.send('POST', path, body, { key, fromVersion })
  expect([first.status, again.json]).toEqual([200, first.json])
})

test('a team that is not there has no bag to count, and to a coach there is nothing to count', async () => {
  expect(await count(freshId(), 1, 0)).toMatchObject({ json: { code: 'reference-unknown' } })
  const { person } = await addMember(club, [{ role: 'coach', teamId }])
  const asCoach = await person.send('POST', path, { id: freshId(), teamId, counts: counts(1) }, { fromVersion: 3 })
  expect(asCoach.json).toMatchObject({ status: 404, code: 'not-found' })
})
