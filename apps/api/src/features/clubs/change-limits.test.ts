import { createHash } from 'node:crypto'
import { paths, pathTo } from '@espalier/contract/paths'
import { canonicalJson, type PlainValue } from '@espalier/domain/ledger'
import { describe, expect, test } from 'vitest'
import { wallOnTheRight } from '../../../../../prisma/demo/patterns'
import { testApi } from '../../../../../tests/factories/api'
import { addMember, expectStatus, makeClub } from '../../../../../tests/factories/club'
import { addPattern, makeDraft, publishCurriculum } from '../../../../../tests/factories/furnished-club'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'
import { FIRST_SETTINGS } from './create-club'

const api = await testApi()
const club = await makeClub(api)
const other = await makeClub(api)
const { clubId, administrator } = club
const director = await addMember(club, [{ role: 'director', teamId: null }])
const path = pathTo(paths.settings, { clubId })

const asked = (profiles: Readonly<Record<string, unknown>>, changed = {}) => ({
  limits: { crossingAtRelease: 'when-released', penaltyMarkYards7v7: 8, profiles, ...changed },
})
const readClub = async () => (await administrator.get(pathTo(paths.club, { clubId }))).json
const change = async (body: object) =>
  director.person.send('PUT', path, body, { fromVersion: (await readClub()).version })

describe('a director', () => {
  test('sets the club’s own values; everything else of the settings stays', async () => {
    const answer = await change(asked({ U10: { topSpeed: 5_800 } }, { penaltyMarkYards7v7: 10 }))
    expect(answer).toMatchObject({ status: 200, json: { id: clubId, version: 2 } })
    const settings = { ...FIRST_SETTINGS, penaltyMarkYards7v7: 10, profiles: { U10: { topSpeed: 5_800 } } }
    expect(await readClub()).toMatchObject({ version: 2, settings })
  })

  test('who resets the last value leaves settings of the very same bytes as before there were any', async () => {
    // 5.4 m/s is what is printed for U10.
    expectStatus(await change(asked({ U10: { topSpeed: 5_400 }, U12: {} })), 200)
    expect((await readClub()).settings).toStrictEqual(FIRST_SETTINGS)
  })

  test('is refused what cannot be, and nothing changes', async () => {
    const before = await readClub()
    const answer = await change(asked({ U9: { reaction: 5_000 }, U10: { carrySpeed: 6_000 } }))
    expect(answer).toMatchObject({
      status: 422,
      json: {
        code: 'profiles-not-possible',
        errors: [
          { pointer: '/limits/profiles/U9/reaction', detail: 'must be from 0.1 to 1' },
          { pointer: '/limits/profiles/U10/carrySpeed', detail: 'must not be above topSpeed' },
        ],
      },
    })
    expect(await readClub()).toEqual(before)
  })

  test.each([
    ['an age that is none', { U30: { topSpeed: 5_000 } }],
    ['a value that is none', { U10: { pace: 5_000 } }],
    ['a value in parts of a thousandth', { U10: { topSpeed: 5_000.5 } }],
  ])('is refused %s as a request that is not as it should be', async (_, profiles) => {
    expect(await change(asked(profiles))).toMatchObject({ status: 400, json: { code: 'bad-request' } })
  })

  test('without a version is asked for one, and from an older one is told what stands now', async () => {
    expect(await director.person.send('PUT', path, asked({}))).toMatchObject({ status: 428 })
    const stale = await director.person.send('PUT', path, asked({}), { fromVersion: 1 })
    const { version } = await readClub()
    expect(stale).toMatchObject({ status: 412, json: { current: { version, document: asked({}) } } })
  })

  test('sends it again after a lost answer: one change; two at once: one of them', async () => {
    const { version: fromVersion } = await readClub()
    const [key, body] = [freshId(), asked({ U11: { reach: 700 } })]
    const first = await director.person.send('PUT', path, body, { key, fromVersion })
    const again = await director.person.send('PUT', path, body, { key, fromVersion })
    expect([first.status, again.json]).toEqual([200, first.json])
    const rivals = await Promise.all(
      [800, 900].map((reach) =>
        director.person.send('PUT', path, asked({ U11: { reach } }), { fromVersion: fromVersion + 1 }),
      ),
    )
    expect(rivals.map(({ status }) => status).toSorted()).toEqual([200, 412])
  })
})

test.each(['administrator', 'auditor'] as const)('an %s may see the limits and not change them', async (role) => {
  const { person } = await addMember(club, [{ role, teamId: null }])
  const answer = await person.send('PUT', path, asked({}), { fromVersion: 1 })
  expect(answer).toMatchObject({ status: 403, json: { code: 'not-allowed' } })
})

test('a director of another club gets the answer for a club that is not there; control: the own one is changed', async () => {
  const stranger = (await addMember(other, [{ role: 'director', teamId: null }])).person
  const before = await readClub()
  const send = (id: string, fromVersion: number) =>
    stranger.send('PUT', pathTo(paths.settings, { clubId: id }), asked({ U8: { reach: 900 } }), { fromVersion })
  const [hidden, missing] = [await send(clubId, before.version), await send(freshId(), before.version)]
  const { instance: _, ...told } = hidden.json
  expect(hidden.status).toBe(404)
  expect(missing.json).toMatchObject(told)
  expect(await readClub()).toEqual(before)
  expect((await send(other.clubId, 1)).status).toBe(200)
})

test('the record book says who changed the limits, how many are the club’s own, and the hash of all', async () => {
  expectStatus(await change(asked({ U10: { topSpeed: 5_800, reach: 700 } })), 200)
  const [row] = await asOwner<{ body: string }>(
    await testDatabase(),
    `select body from ledger_entry where club_id = '${clubId}' order by seq desc limit 1`,
  )
  const { limits } = asked({ U10: { topSpeed: 5_800, reach: 700 } })
  const limitsHash = createHash('sha256')
    .update(canonicalJson(limits as PlainValue))
    .digest('hex')
  expect(JSON.parse(row!.body)).toMatchObject({
    kind: 'club-limits.changed',
    subject: clubId,
    actor: director.memberId,
    facts: { ownValues: 2, penaltyMarkYards7v7: 8, crossingAtRelease: 'when-released', limitsHash },
  })
})

describe('the check of a pattern', () => {
  const countToFix = async (patternId: string) =>
    (await director.person.get(pathTo(paths.patterns, { clubId }))).json.patterns.find(
      (each: { patternId: string }) => each.patternId === patternId,
    ).toFix

  test('is by the club’s own values, before publishing and at it; what was published before stays as it was', async () => {
    expectStatus(await change(asked({})), 200)
    const patternId = await addPattern(club, director, wallOnTheRight)
    const draft = makeDraft(patternId, 'limits')
    const curriculumId = await publishCurriculum(club, director, draft)
    const versionOf = async (number: number) =>
      (await director.person.get(pathTo(paths.version, { clubId, curriculumId, number }))).json
    const frozen = await versionOf(1)
    expect(frozen.content.settings).not.toHaveProperty('profiles')
    expect(await countToFix(patternId)).toBe(0)

    const publish = async () => {
      const draftPath = pathTo(paths.draft, { clubId, curriculumId })
      const { version } = (await director.person.get(draftPath)).json
      const versions = pathTo(paths.versions, { clubId, curriculumId })
      return director.person.send('POST', versions, { id: freshId() }, { fromVersion: version })
    }
    // Nobody kicks so softly, so that something of the pattern must be beyond these players.
    const weak = { kickSpeedMax: 3_000, arrivalSpeed: 1_000, arrivalSpeedIntoSpace: 500 }
    const age = wallOnTheRight.ageGroup
    expectStatus(await change(asked({ [age]: weak })), 200)
    expect(await countToFix(patternId)).toBeGreaterThan(0)
    expect(await publish()).toMatchObject({ status: 422, json: { code: 'draft-has-notes-to-fix' } })

    const profiles = { [age]: { reaction: 300 } }
    expectStatus(await change(asked(profiles)), 200)
    expectStatus(await publish(), 201)
    const second = await versionOf(2)
    expect(second.content.settings.profiles).toEqual(profiles)
    expect(createHash('sha256').update(second.canonical).digest('hex')).toBe(second.summary.contentHash)
    const before = await versionOf(1)
    expect([before.canonical, before.content]).toEqual([frozen.canonical, frozen.content])
    expect(createHash('sha256').update(before.canonical).digest('hex')).toBe(before.summary.contentHash)
  })
})
