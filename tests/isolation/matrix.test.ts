import { paths, pathTo } from '@espalier/contract/paths'
import { accessRules, permissions } from '@espalier/domain/access'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { SEPTEMBER, testDeps } from '../factories/api'
import { makeFurnishedClub } from '../factories/furnished-club'
import type { Answer } from '../factories/person'
import { testDatabase, testPools } from '../support/database'
import { watchCanaries } from './canaries'
import { buildLiveApi, listUnguarded } from './live-routes'
import { ask, type Cell, caseOf, comparable, difference, expectedOf, listCells, makeWorld, type World } from './matrix'

const clock = { now: SEPTEMBER + 7_200_000 }
const watch = watchCanaries()
const deps = testDeps(await testPools(), clock)
const live = await buildLiveApi(deps, watch.listen)
let world: World

beforeAll(async () => {
  const api = { app: live.app, deps, clock }
  const club = await makeFurnishedClub(api)
  const other = await makeFurnishedClub(api)
  world = await makeWorld(live, await testDatabase(), club, other)
  await forbidEverythingForeign(club, other)
})
afterAll(() => live.app.close())

/** Who may see names of children sees those of the own team; nobody sees the other club. */
async function forbidEverythingForeign(
  club: Awaited<ReturnType<typeof makeFurnishedClub>>,
  other: Awaited<ReturnType<typeof makeFurnishedClub>>,
) {
  const [first, second] = club.teams
  const foreign = [other.canary, ...other.teams.map(({ canary }) => canary)]
  const children = [first.canary, second.canary]
  const unseen: Record<string, readonly string[]> = {
    administrator: foreign,
    director: [...foreign, ...children],
    auditor: [...foreign, ...children],
    coach: [...foreign, second.canary],
    assistant: [...foreign, second.canary],
    stranger: [club.canary, ...children],
  }
  for (const [asker, canaries] of Object.entries(unseen)) {
    const me = await world.people[asker as keyof World['people']].get(paths.me)
    watch.forbid(me.json.accountId, canaries)
  }
}

describe('every live route', () => {
  test('says who may ask it, and answers by a schema', () => {
    expect(live.routes.length).toBeGreaterThan(40)
    expect(listUnguarded(live.routes)).toEqual([])
    expect(live.routes.filter(({ hasResponseSchema }) => !hasResponseSchema)).toEqual([])
  })

  test('control: a route that says nothing is found', async () => {
    const hole = await buildLiveApi(deps, async (app) => {
      app.get('/v1/hole', async () => ({}))
    })
    await hole.app.close()
    expect(listUnguarded(hole.routes)).toEqual(['GET /v1/hole'])
  })

  test('of a club has a row in the matrix', () => {
    const missing = live.routes.filter(({ access }) => access?.kind === 'member')
    expect(missing.map((route) => caseOf(route).target)).toHaveLength(missing.length)
  })

  test('that writes asks for an Idempotency-Key, but for the batch whose operations carry their own', () => {
    const writes = live.routes.filter(({ method, access }) => method !== 'GET' && access?.kind === 'member')
    expect(writes.filter(({ command }) => !command).map(({ url }) => url)).toEqual([paths.operations])
  })
})

describe('role × route × object', () => {
  const answers = new Map<string, Answer>()

  test('every cell answers as the policy says, and nobody is sent a word of somebody else', async () => {
    const differences: string[] = []
    const cells = listCells(live.routes)
    for (const cell of cells) {
      const answer = await ask(world, cell)
      answers.set(nameOf(cell), answer)
      const found = difference(expectedOf(world, cell), answer)
      if (found !== null) differences.push(`${nameOf(cell)}: ${found}`)
    }
    expect(differences).toEqual([])
    expect(cells.length).toBeGreaterThan(1_500)
    expect(watch.leaks).toEqual([])
    expect(watch.scanned).toBeGreaterThan(cells.length)
  }, 240_000)

  test('what is hidden answers byte for byte like what does not exist', () => {
    const differences: string[] = []
    let compared = 0
    for (const cell of listCells(live.routes)) {
      if (cell.kind === 'random id' || cell.kind === 'random club' || expectedOf(world, cell) !== 404) continue
      const kind = cell.kind === 'other club' || cell.asker === 'stranger' ? 'random club' : 'random id'
      const hidden = comparable(answers.get(nameOf(cell))!)
      const missing = comparable(answers.get(nameOf({ ...cell, kind }))!)
      compared += 1
      if (hidden !== missing)
        differences.push(`${nameOf(cell)}: ${hidden.slice(0, 300)} is not ${missing.slice(0, 300)}`)
    }
    expect(differences).toEqual([])
    expect(compared).toBeGreaterThan(300)
  })

  test('an unknown address answers like a missing thing', async () => {
    const unknown = await world.people.coach.get('/v1/nothing-here')
    const missing = await world.people.coach.get(
      pathTo(paths.team, { clubId: world.club.clubId, teamId: world.objects['random id'].teamId }),
    )
    expect(comparable(unknown)).toBe(comparable(missing))
  })

  test('control: one rule of the table changed turns the matrix red', async () => {
    const rules = {
      ...accessRules,
      permissions: {
        ...permissions,
        'records.read': { ...permissions['records.read'], assistant: 'club' },
        'squad.read-names': { ...permissions['squad.read-names'], auditor: 'club' },
      },
    } as const
    const careless = await buildLiveApi({ ...deps, accessRules: rules }, watch.listen)
    const people = Object.fromEntries(
      Object.entries(world.people).map(([name, person]) => [name, { ...person, ...askThrough(careless, person) }]),
    ) as World['people']
    const changed = { ...world, live: careless, people }
    const before = watch.leaks.length
    const red: string[] = []
    for (const cell of listCells(live.routes).filter(({ route }) => route.method === 'GET')) {
      if (cell.asker !== 'assistant' && cell.asker !== 'auditor') continue
      if (difference(expectedOf(changed, cell), await ask(changed, cell)) !== null) red.push(nameOf(cell))
    }
    await careless.app.close()
    expect(red).toContain(`assistant GET ${paths.teamRecords} of other team`)
    expect(watch.leaks.splice(before).some((leak) => leak.includes(paths.squad))).toBe(true)
  }, 120_000)
})

function askThrough(careless: Awaited<ReturnType<typeof buildLiveApi>>, person: World['people']['coach']) {
  return {
    get: async (path: string) => {
      const headers = person.cookie === null ? {} : { cookie: person.cookie }
      const answer = await careless.app.inject({ method: 'GET', url: path, headers })
      const text = answer.payload
      return { status: answer.statusCode, headers: answer.headers, text, json: text === '' ? null : JSON.parse(text) }
    },
  }
}

function nameOf({ route, asker, kind }: Cell): string {
  return `${asker} ${route.method} ${route.url} of ${kind}`
}
