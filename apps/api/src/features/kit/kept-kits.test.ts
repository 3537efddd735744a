import { paths, pathTo } from '@espalier/contract/paths'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { makeFurnishedClub } from '../../../../../tests/factories/furnished-club'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'
import { findKept, KEPT_MILLISECONDS, keepKit } from './kept-kits'

const api = await testApi()
const club = await makeFurnishedClub(api)
const { clubId } = club
const [first, second] = club.teams

type Team = typeof first

const readKit = async (team: Team) =>
  (await team.coach.person.get(pathTo(paths.kit, { clubId, teamId: team.teamId }))).text

/** The child's name, as the factory makes the first of a squad. */
const nameIn = (team: Team) => `0${team.canary}`

describe('a name that is taken away', () => {
  test('is gone from the very next kit when the child leaves; control: a kit kept past that would still tell it', async () => {
    const before = await readKit(first)
    expect(before).toContain(nameIn(first))
    expect(await readKit(first)).toBe(before)
    const edit = { shortName: nameIn(first), shirt: 1, home: null, stretch: null, goalkeeper: 'no', foot: 'right' }
    const path = pathTo(paths.player, { clubId, teamId: first.teamId, playerId: first.playerId })
    const left = await club.administrator.send('PUT', path, { ...edit, left: true }, { fromVersion: 1 })
    expect(left.status).toBe(200)
    expect(await readKit(first)).not.toContain(nameIn(first))

    const { size } = (await club.auditor.person.get(pathTo(paths.ledgerHead, { clubId }))).json
    const until = api.clock.now + 1000
    keepKit(clubId, first.teamId, { text: before, tag: '"old"', bookSize: size, from: api.clock.now, until })
    expect(await readKit(first)).toContain(nameIn(first))
  })

  test('past the commands, by an operator, is gone after a quarter of an hour', async () => {
    expect(await readKit(second)).toContain(nameIn(second))
    const key = 'delete from subject_key where club_id = $1 and player_id = $2'
    await asOwner(await testDatabase(), key, [clubId, second.playerId])
    api.clock.now += KEPT_MILLISECONDS - 1
    expect(await readKit(second)).toContain(nameIn(second))
    api.clock.now += 1
    expect(await readKit(second)).not.toContain(nameIn(second))
  })
})

describe('a kept kit', () => {
  afterEach(() => {
    vi.useRealTimers()
  })

  const kit = { text: 'names', tag: '"t"', bookSize: 1, from: 0, until: Number.MAX_SAFE_INTEGER }

  test('leaves the memory after a quarter of an hour though nobody asks, counted anew when it is made anew', () => {
    vi.useFakeTimers()
    const ids = [freshId(), freshId()] as const
    const isKept = () => findKept(...ids, 1, 0) !== null
    keepKit(...ids, kit)
    vi.advanceTimersByTime(KEPT_MILLISECONDS - 1)
    keepKit(...ids, kit)
    vi.advanceTimersByTime(KEPT_MILLISECONDS - 1)
    expect(isKept()).toBe(true)
    vi.advanceTimersByTime(1)
    expect(isKept()).toBe(false)
    expect(vi.getTimerCount()).toBe(0)
  })
})
