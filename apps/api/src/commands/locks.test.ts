import { paths, pathTo } from '@espalier/contract/paths'
import { expect, test } from 'vitest'
import { testApi } from '../../../../tests/factories/api'
import { addMember, makeClub } from '../../../../tests/factories/club'
import { type FurnishedClub, makeFurnishedClub } from '../../../../tests/factories/furnished-club'
import { type Answer, newSecret, type Person } from '../../../../tests/factories/person'
import { freshId, testDatabase } from '../../../../tests/support/database'
import { withOwner } from '../../../../tests/support/database-cluster'
import { type CommandRequest, runCommand } from './run-command'

const api = await testApi()
const database = await testDatabase()

type Attempt = { readonly name: string; readonly send: (person: Person) => Promise<Answer> }

/** One request for each row that a command locks before it asks the policy. */
function listAttempts({ clubId, administratorId, curriculumId, patternId, spaceId, teams }: FurnishedClub): Attempt[] {
  const [, { teamId, playerId }] = teams
  const edit = { fromVersion: 99 }
  const link = () => ({ id: freshId(), tokenHash: newSecret().hash.toString('hex') })
  const leaving = { displayName: 'X', roles: [], left: true }
  return [
    {
      name: 'change a person',
      send: (person) => person.send('PUT', pathTo(paths.person, { clubId, memberId: administratorId }), leaving, edit),
    },
    {
      name: 'make a link',
      send: (person) => person.send('POST', pathTo(paths.signInLinks, { clubId, memberId: administratorId }), link()),
    },
    {
      name: 'publish',
      send: (person) => person.send('POST', pathTo(paths.versions, { clubId, curriculumId }), { id: freshId() }, edit),
    },
    {
      name: 'import children',
      send: (person) =>
        person.send('POST', pathTo(paths.squadImports, { clubId, teamId }), {
          id: freshId(),
          players: [{ ...CHILD, id: freshId() }],
        }),
    },
    {
      name: 'change a child',
      send: (person) =>
        person.send('PUT', pathTo(paths.player, { clubId, teamId, playerId }), { ...CHILD, left: false }, edit),
    },
    {
      name: 'adopt',
      send: (person) =>
        person.send('POST', pathTo(paths.adoptions, { clubId, teamId }), {
          id: freshId(),
          curriculumId,
          number: 1,
          fromDate: '2026-10-01',
        }),
    },
    {
      name: 'save a pattern',
      send: async (person) => {
        const document = PATTERN_OF.get(patternId)
        return person.send('PUT', pathTo(paths.pattern, { clubId, patternId }), { document }, edit)
      },
    },
    {
      name: 'measure a space',
      send: (person) =>
        person.send('PUT', pathTo(paths.space, { clubId, spaceId }), { space: SPACE_OF.get(spaceId) }, edit),
    },
  ]
}

const CHILD = { shortName: 'K', shirt: null, home: null, stretch: null, goalkeeper: 'no', foot: 'right' }
const PATTERN_OF = new Map<string, unknown>()
const SPACE_OF = new Map<string, unknown>()

async function readBodies({ clubId, director, administrator, patternId, spaceId }: FurnishedClub): Promise<void> {
  PATTERN_OF.set(patternId, (await director.person.get(pathTo(paths.pattern, { clubId, patternId }))).json.document)
  const { spaces } = (await administrator.get(pathTo(paths.spaces, { clubId }))).json
  SPACE_OF.set(spaceId, spaces.find((one: { spaceId: string }) => one.spaceId === spaceId).space)
}

/** Holds every row that these commands lock, as long as the work lasts. */
function whileHeld(club: FurnishedClub, work: () => Promise<void>): Promise<void> {
  return withOwner(database.ownerUrl, async (owner) => {
    await owner.query('begin')
    for (const table of ['club', 'membership', 'team', 'player', 'curriculum', 'draft', 'pattern', 'space']) {
      const { rowCount } = await owner.query(`select 1 from ${table} where club_id = $1 for update`, [club.clubId])
      expect(rowCount, table).toBeGreaterThan(0)
    }
    await work()
    await owner.query('rollback')
  })
}

const sayOf = ({ status, json }: Answer) => [status, json.code, json.detail, json.errors]

test('who has a permission nowhere gets the same answer while every row is held by others: such a request locks nothing', async () => {
  const club = await makeFurnishedClub(api)
  await readBodies(club)
  const attempts = listAttempts(club)
  const { person } = club.teams[0].assistant
  const free = new Map<string, unknown>()
  for (const { name, send } of attempts) free.set(name, sayOf(await send(person)))
  for (const [name, [status]] of free as Map<string, [number]>) expect([403, 404], name).toContain(status)
  await whileHeld(club, async () => {
    for (const { name, send } of attempts) expect(sayOf(await send(person)), name).toEqual(free.get(name))
    // The control: the same request of somebody who may do it waits for these rows.
    const waits = await attempts[0]!.send(club.administrator)
    expect(waits.json).toMatchObject({ status: 503, code: 'not-ready' })
  })
})

test("an assistant who keeps asking for the administrator's row holds up no change of people", async () => {
  const club = await makeFurnishedClub(api)
  const { clubId, administrator } = club
  const [{ assistant, teamId }] = club.teams
  const [change, link] = listAttempts(club)
  let stop = false
  const statuses = new Set<number>()
  const hammer = async (attempt: Attempt) => {
    while (!stop) statuses.add((await attempt.send(assistant.person)).status)
  }
  const hammers = [hammer(change!), hammer(change!), hammer(link!), hammer(link!)]
  try {
    for (let version = 1; version <= 4; version += 1) {
      const path = pathTo(paths.person, { clubId, memberId: assistant.memberId })
      const body = { displayName: 'A', roles: [{ role: 'assistant', teamId }], left: false }
      const begun = performance.now()
      expect((await administrator.send('PUT', path, body, { fromVersion: version })).status).toBe(200)
      // A deadlock is noticed only after a whole second; without one an edit takes some milliseconds.
      expect(performance.now() - begun).toBeLessThan(900)
    }
  } finally {
    stop = true
    await Promise.all(hammers)
  }
  expect([...statuses].every((status) => status === 403 || status === 404)).toBe(true)
})

test('two administrators who change two people at once both succeed, quickly; who remove each other: one does', async () => {
  const club = await makeClub(api)
  const { clubId } = club
  const second = await addMember(club, [{ role: 'administrator', teamId: null }], 'Second')
  const people = [await addMember(club, [AUDITOR], 'One'), await addMember(club, [AUDITOR], 'Two')] as const
  const change = (who: Person, memberId: string, fromVersion: number, left = false) =>
    who.send(
      'PUT',
      pathTo(paths.person, { clubId, memberId }),
      { displayName: 'Changed', roles: left ? [] : [AUDITOR], left },
      { fromVersion },
    )
  for (let version = 1; version <= 4; version += 1) {
    const begun = performance.now()
    const answers = await Promise.all([
      change(club.administrator, people[0].memberId, version),
      change(second.person, people[1].memberId, version),
    ])
    expect(answers.map(({ status }) => status)).toEqual([200, 200])
    expect(performance.now() - begun).toBeLessThan(900)
  }
  const removals = await Promise.all([
    change(club.administrator, second.memberId, 1, true),
    change(second.person, club.administratorId, 1, true),
  ])
  expect(removals.map(({ status }) => status).sort()).toEqual([200, 404])
})

const AUDITOR = { role: 'auditor', teamId: null } as const

test('a conflict that outlasts every repeat answers that the same may be sent again', async () => {
  const club = await makeClub(api)
  const accountId = await accountOf(club.clubId, club.administratorId)
  let tries = 0
  const request: CommandRequest = {
    clubId: club.clubId,
    accountId,
    key: freshId(),
    fingerprint: Buffer.alloc(32, 7),
    ifMatch: undefined,
  }
  const run = (code: string) =>
    runCommand(api.deps, request, {
      permission: 'seasons.write',
      find: async () => ({}),
      lock: async () => true,
      target: () => ({}),
      work: async () => {
        tries += 1
        throw Object.assign(new Error('conflict'), { code })
      },
    })
  expect(await run('40P01')).toEqual({ ok: false, refusal: { code: 'not-ready' } })
  expect(await run('40001')).toEqual({ ok: false, refusal: { code: 'not-ready' } })
  expect(tries).toBe(8)
  await expect(run('22003')).rejects.toThrow('conflict')
})

function accountOf(clubId: string, memberId: string): Promise<string> {
  return withOwner(database.ownerUrl, async (owner) => {
    const text = 'select account_id from membership where club_id = $1 and member_id = $2'
    return (await owner.query<{ account_id: string }>(text, [clubId, memberId])).rows[0]!.account_id
  })
}
