import { paths, pathTo } from '@espalier/contract/paths'
import { expect, test } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { addSeason, addTeam, makeClub } from '../../../../../tests/factories/club'
import { addSpace, TUESDAYS } from '../../../../../tests/factories/furnished-club'
import { freshId } from '../../../../../tests/support/database'

const api = await testApi()

test('a slot becomes dates inside the season only, and each is there once however often it is sent', async () => {
  const club = await makeClub(api)
  const { clubId, administrator } = club
  const teamId = await addTeam(club, await addSeason(club))
  const spaceId = await addSpace(club, 'S')
  const path = pathTo(paths.slots, { clubId, teamId })
  const key = freshId()
  const body = { id: freshId(), spaceId, ...TUESDAYS, validFrom: '2026-08-01', validTo: '2027-03-01' }
  const answers = await Promise.all(Array.from({ length: 5 }, () => administrator.send('POST', path, body, { key })))
  expect(new Set(answers.map(({ text }) => text)).size).toBe(1)
  const { dates } = (await administrator.get(pathTo(paths.dates, { clubId, teamId }))).json
  expect(dates).toHaveLength(16)
  expect(dates[0]).toMatchObject({ localDate: '2026-09-01', localStart: '17:30', minutes: 75, spaceId, state: 'on' })
  expect(dates.at(-1).localDate).toBe('2026-12-15')
  expect((await administrator.get(path)).json.slots).toEqual([
    {
      slotId: body.id,
      spaceId,
      weekday: 2,
      localStart: '17:30',
      minutes: 75,
      validFrom: '2026-08-01',
      validTo: '2027-03-01',
    },
  ])
})

test('days that the calendar lacks, an end before the start and an unknown space are pointed at', async () => {
  const club = await makeClub(api)
  const { clubId, administrator } = club
  const teamId = await addTeam(club, await addSeason(club))
  const path = pathTo(paths.slots, { clubId, teamId })
  const send = (changed: object) =>
    administrator.send('POST', path, { id: freshId(), spaceId: null, ...TUESDAYS, ...changed })
  expect((await send({ validFrom: '2026-02-30' })).json.errors).toMatchObject([{ pointer: '/validFrom' }])
  expect((await send({ validTo: '2026-08-01' })).json.errors).toMatchObject([{ pointer: '/validTo' }])
  expect((await send({ spaceId: freshId() })).json.errors).toMatchObject([{ pointer: '/spaceId' }])
  const long = { validFrom: '2026-09-01', validTo: '2027-10-07' }
  expect((await send(long)).json).toMatchObject({ code: 'bad-request', errors: [{ pointer: '/validTo' }] })
  expect((await send({ weekday: 8 })).json.errors).toMatchObject([{ pointer: '/weekday' }])
  expect((await send({ localStart: '24:00' })).json.errors).toMatchObject([{ pointer: '/localStart' }])
  expect((await administrator.get(path)).json.slots).toEqual([])
})
