import { paths, pathTo } from '@espalier/contract/paths'
import type { Operation } from '@espalier/contract/records'
import { decideAccess, type Permission } from '@espalier/domain/access'
import { ok } from '@espalier/domain/quantities'
import pg from 'pg'
import { afterAll, describe, expect, test } from 'vitest'
import { type Command, runCommand } from '../../apps/api/src/commands/run-command'
import { closePools, openPools } from '../../apps/api/src/db/pool'
import { SEPTEMBER, testDeps } from '../factories/api'
import { expectStatus, makeClub } from '../factories/club'
import { type FurnishedClub, makeFurnishedClub } from '../factories/furnished-club'
import type { Answer, Person } from '../factories/person'
import { buildLiveApi, type LiveRoute } from '../isolation/live-routes'
import { caseOf } from '../isolation/matrix'
import { objectsOf, type Request } from '../isolation/requests'
import { freshDatabase, freshId } from '../support/database'
import { listRepeatFaults, type Repeatable, type Told } from './support/list-repeat-faults'
import { OPERATION_EXAMPLES } from './support/operation-examples'

// A database of its own: the control takes a constraint away.
const database = await freshDatabase()
const { appUrl, identityUrl } = database
const pools = await openPools({ appUrl, identityUrl, appConnections: 6, identityConnections: 2 }, () => {})
const clock = { now: SEPTEMBER }
const deps = testDeps(pools, clock)
const live = await buildLiveApi(deps)
const api = { app: live.app, deps, clock }
const owner = new pg.Client({ connectionString: database.ownerUrl })
await owner.connect()
const club = await makeFurnishedClub(api)
afterAll(async () => {
  await owner.end()
  await live.app.close()
  await closePools(pools)
  await database.drop()
})

const nameOf = ({ method, url }: LiveRoute) => `${method} ${url}`
const commands = live.routes.filter(({ command }) => command)

/** Whoever of the club may do this. */
function senderFor(
  permission: Permission,
  { clubId, administratorId, administrator, director }: FurnishedClub,
): Person {
  const member = { memberId: administratorId, clubId, roles: [{ role: 'administrator', teamId: null }] } as const
  return decideAccess(member, permission, {}) === 'allowed' ? administrator : director.person
}

/** What must have happened before some commands can be done once more, and what their body then says. */
const BEFORE: Readonly<Record<string, (request: Request) => Promise<Request>>> = {
  [`POST ${paths.versions}`]: async (request) => {
    const draft = routeOf(`PUT ${paths.draft}`)
    const saved = await requestTo(draft)
    expectStatus(await sendTo(draft, saved, freshId(), saved.body), 200)
    return request
  },
  [`POST ${paths.adoptions}`]: async (request) => {
    const versions = routeOf(`POST ${paths.versions}`)
    const publication = await requestTo(versions)
    const published = expectStatus(await sendTo(versions, publication, freshId(), publication.body), 201)
    return { ...request, body: { ...(request.body as object), number: published.json.version } }
  },
}

const routeOf = (name: string) => commands.find((route) => nameOf(route) === name)!

async function requestTo(route: LiveRoute): Promise<Request> {
  const objects = objectsOf(club, club.teams[0], { recordId: freshId(), entryId: freshId() })
  const request = caseOf(route).make(objects)
  return (await BEFORE[nameOf(route)]?.(request)) ?? request
}

/** Nothing there yet is version 0. */
async function versionOf({ versioned }: Request): Promise<number | null> {
  if (versioned === undefined) return null
  const text = `select version from ${versioned.table} where ${versioned.key} = $1`
  return (await owner.query<{ version: number }>(text, [versioned.id])).rows[0]?.version ?? 0
}

async function sendTo(
  route: LiveRoute,
  request: Request,
  key: string,
  body: unknown,
  known?: number | null,
): Promise<Answer> {
  if (route.access?.kind !== 'member') throw new Error(`${route.url} names no permission`)
  const version = known === undefined ? await versionOf(request) : known
  const sending = version === null ? { key } : { key, fromVersion: version }
  return senderFor(route.access.permission, club).send(route.method as 'POST', request.path, body, sending)
}

function tellOf({ status, headers, json }: Answer): Told {
  if (status >= 400) return { kind: 'refused', code: json.code, answer: JSON.stringify([status, json.code]) }
  const kind = headers['idempotency-replayed'] === 'true' ? 'replayed' : 'applied'
  return { kind, code: null, answer: JSON.stringify([status, json, headers.etag ?? null]) }
}

async function makeRepeatable(route: LiveRoute): Promise<Repeatable> {
  const request = await requestTo(route)
  const version = await versionOf(request)
  const send = async (key: string, body: unknown) => tellOf(await sendTo(route, request, key, body, version))
  return {
    send: (key) => send(key, request.body),
    sendOther: (key) => send(key, changeOneWord(request.body)),
  }
}

/** The same body with another id, or with one of its names changed: right in itself, and another command. */
function changeOneWord(body: unknown): unknown {
  const found = body as Readonly<Record<string, unknown>>
  if (typeof found.id === 'string') return { ...found, id: freshId() }
  for (const [name, value] of Object.entries(found)) {
    if (['displayName', 'shortName', 'title', 'name'].includes(name)) return { ...found, [name]: `${value}!` }
    if (name === 'strongFootMm') return { ...found, [name]: Number(value) + 1_000 }
    if (name === 'penaltyMarkYards7v7') return { ...found, [name]: value === 8 ? 10 : 8 }
    if (['document', 'space', 'limits'].includes(name)) return { ...found, [name]: changeOneWord(value) }
  }
  throw new Error(`nothing to change in ${JSON.stringify(body)}`)
}

describe('one effect and one answer, sent twice or five times at once; another body under the key is refused', () => {
  test.each(Object.keys(OPERATION_EXAMPLES) as Operation['op'][])('operation %s', async (op) => {
    const [team] = club.teams
    const path = pathTo(paths.operations, { clubId: club.clubId })
    const send = async (operation: object): Promise<Told> => {
      const { json } = expectStatus(await team.coach.person.send('POST', path, { operations: [operation] }), 200)
      const [{ id, status, entry, problem }] = json.results
      return { kind: status, code: problem?.code ?? null, answer: JSON.stringify([id, entry]) }
    }
    let round = 0
    const faults = await listRepeatFaults(owner, club.clubId, async () => {
      const operation = await OPERATION_EXAMPLES[op](club, round)
      round += 1
      return {
        // An operation's id is its key.
        send: (key) => send({ ...operation, id: key }),
        sendOther: (key) => send({ ...operation, id: key, at: '2026-09-15T18:00:01.000Z' }),
      }
    })
    expect(faults).toEqual([])
  })

  test.each(commands.map((route) => [nameOf(route), route] as const))('%s', async (_, route) => {
    expect(await listRepeatFaults(owner, club.clubId, () => makeRepeatable(route))).toEqual([])
  })

  test('the list is that of the live routes', () => {
    expect(commands.length).toBeGreaterThan(14)
    expect(() => caseOf({ ...commands[0]!, url: '/v1/clubs/:clubId/new-command' })).toThrow('does not know')
  })
})

/** A command that nothing but its key keeps from being done twice: no id of the client's, no version. */
const addAnySeason: Command<true> = {
  permission: 'seasons.write',
  find: async () => ({}),
  lock: async () => true,
  target: () => ({}),
  work: async ({ db, newId }) => {
    const id = newId()
    const text = 'insert into season (club_id, season_id, name, first_day, last_day) values ($1, $2, $3, $4, $5)'
    const values = [db.clubId, id, `Season ${id}`, '2026-09-01', '2026-12-20']
    await db.sql.changed({ name: 'insert-any-season', text, values })
    return ok({ status: 201, id, version: null, entry: { kind: 'season.added', subjectId: id, facts: {} } })
  },
}

async function listFaultsOfAnySeason(): Promise<readonly string[]> {
  const { clubId, administrator } = await makeClub(api)
  const { accountId } = (await administrator.get(paths.me)).json
  const send = async (key: string, content: number): Promise<Told> => {
    const fingerprint = Buffer.alloc(32, content)
    const told = await runCommand(deps, { clubId, accountId, key, fingerprint, ifMatch: undefined }, addAnySeason)
    if (!told.ok) return { kind: 'refused', code: told.refusal.code, answer: told.refusal.code }
    const { replayed, status, id, version, entry } = told.value
    return { kind: replayed ? 'replayed' : 'applied', code: null, answer: JSON.stringify([status, id, version, entry]) }
  }
  return listRepeatFaults(owner, clubId, async () => ({
    send: (key) => send(key, 1),
    sendOther: (key) => send(key, 2),
  }))
}

test('control: without the uniqueness that claims a key, twice has two effects and five at once have five', async () => {
  expect(await listFaultsOfAnySeason()).toEqual([])
  await owner.query('alter table idempotency drop constraint idempotency_pkey')
  const faults = await listFaultsOfAnySeason()
  expect(faults).toContain('the second sending had an effect')
  expect(faults).toContain('another body had an effect')
  expect(faults).toContain('five at once had 5 effects')
  expect(faults).toContain('two rivals had 2 effects')
})
