import { paths, pathTo } from '@espalier/contract/paths'
import { expect, test } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { makeClub } from '../../../../../tests/factories/club'
import { makeFurnishedClub } from '../../../../../tests/factories/furnished-club'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'

const api = await testApi()
const database = await testDatabase()

test('a season lasts at most 400 days of this century and ends no earlier than it begins; each fault is pointed at', async () => {
  const club = await makeClub(api)
  const { clubId } = club
  const add = (firstDay: string, lastDay: string) =>
    club.administrator.send('POST', pathTo(paths.seasons, { clubId }), {
      id: freshId(),
      name: `From ${firstDay} to ${lastDay}`,
      firstDay,
      lastDay,
    })
  for (const [firstDay, lastDay, pointer] of [
    ['2026-09-01', '2326-12-20', '/lastDay'],
    ['2026-09-01', '2027-10-07', '/lastDay'],
    ['2026-09-01', '2026-08-31', '/lastDay'],
    ['0000-01-01', '2026-01-01', '/firstDay'],
    ['1999-12-31', '2000-01-31', '/firstDay'],
    ['2026-02-29', '2026-03-31', '/firstDay'],
  ] as const) {
    const answer = await add(firstDay, lastDay)
    expect(answer.json, firstDay).toMatchObject({ status: 400, code: 'bad-request', errors: [{ pointer }] })
  }
  expect((await add('2026-09-01', '2027-10-06')).status).toBe(201)
  expect((await add('2026-09-01', '2026-09-01')).status).toBe(201)
})

test('the database holds seasons and slots to the same bounds', async () => {
  const { clubId, seasonId } = await makeFurnishedClub(api)
  const season = 'update season set last_day = first_day + $2::int where season_id = $1'
  await expect(asOwner(database, season, [seasonId, 401])).rejects.toThrow('season_days')
  await expect(asOwner(database, season, [seasonId, -1])).rejects.toThrow(/check constraint/)
  await asOwner(database, season, [seasonId, 400])
  const slots = 'update training_slot set valid_to = valid_from + $2::int where club_id = $1'
  await expect(asOwner(database, slots, [clubId, 401])).rejects.toThrow('training_slot_days')
  await asOwner(database, slots, [clubId, 400])
})

test('numbers that the database cannot count to and days before this century are bad requests everywhere', async () => {
  const club = await makeFurnishedClub(api)
  const { clubId, curriculumId } = club
  const [{ teamId, coach, dateIds }] = club.teams
  const adopt = (number: number, fromDate: string) =>
    coach.person.send('POST', pathTo(paths.adoptions, { clubId, teamId }), {
      id: freshId(),
      curriculumId,
      number,
      fromDate,
    })
  expect((await adopt(2 ** 40, '2026-10-01')).json).toMatchObject({ status: 400, errors: [{ pointer: '/number' }] })
  expect((await adopt(1, '0000-01-01')).json).toMatchObject({ status: 400, errors: [{ pointer: '/fromDate' }] })
  const body = { teamId, dateId: dateIds[0], curriculumId, number: 2 ** 40, inputsHash: 'a'.repeat(64) }
  const guest = { ...body, number: 1, plan: { children: ['guest:\ud800'] } }
  const send = async (sent: object) => {
    const operation = { op: 'keep-plan', v: 1, id: freshId(), at: '2026-09-15T18:00:00.000Z', zone: 'x', body: sent }
    return (await coach.person.send('POST', pathTo(paths.operations, { clubId }), { operations: [operation] })).json
      .results[0]
  }
  const pointers = ({ problem }: { problem: { errors: { pointer: string }[] } }) =>
    problem.errors.map(({ pointer }) => pointer)
  expect(await send(body)).toMatchObject({ status: 'refused', problem: { code: 'bad-request' } })
  expect(pointers(await send(body))).toContain('/body/number')
  // RFC 8785 cannot write a lone surrogate: what cannot be fingerprinted is refused, and not unknown for ever.
  expect(await send(guest)).toMatchObject({ status: 'refused', problem: { code: 'bad-request' } })
  expect(pointers(await send(guest))).toContain('/body/plan/children/0')
})
