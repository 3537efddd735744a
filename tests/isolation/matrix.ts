import { paths, pathTo } from '@espalier/contract/paths'
import {
  type Member as Asker,
  accessRules,
  decideAccess,
  listTeamsInReach,
  type Permission,
} from '@espalier/domain/access'
import { expectStatus, type RoleName } from '../factories/club'
import type { FurnishedClub } from '../factories/furnished-club'
import { type Answer, makePerson, type Person } from '../factories/person'
import { asOwner, type TestDatabase } from '../support/database'
import type { LiveApi, LiveRoute } from './live-routes'
import { type Objects, objectsOf, ROUTE_CASES, type RouteCase, randomObjects, reportOf } from './requests'

export const OBJECT_KINDS = ['own', 'other team', 'other club', 'random club', 'random id'] as const
export type ObjectKind = (typeof OBJECT_KINDS)[number]

export type AskerName = RoleName | 'anonymous' | 'left' | 'stranger'
export const ASKERS: readonly AskerName[] = [
  'anonymous',
  'administrator',
  'director',
  'coach',
  'assistant',
  'auditor',
  'left',
  'stranger',
]

export type World = {
  readonly live: LiveApi
  readonly database: TestDatabase
  readonly club: FurnishedClub
  readonly objects: Readonly<Record<ObjectKind, Objects>>
  readonly people: Readonly<Record<AskerName, Person>>
  readonly members: Readonly<Partial<Record<AskerName, Asker>>>
}

/** A report of each team first, so that there is a record and an entry to ask for. */
export async function makeWorld(
  live: LiveApi,
  database: TestDatabase,
  club: FurnishedClub,
  other: FurnishedClub,
): Promise<World> {
  const [first, second] = club.teams
  const own = objectsOf(club, first, await report(club, 0))
  const foreign = objectsOf(other, other.teams[0], await report(other, 0))
  const people: Record<AskerName, Person> = {
    anonymous: makePerson(live.app),
    administrator: club.administrator,
    director: club.director.person,
    coach: first.coach.person,
    assistant: first.assistant.person,
    auditor: club.auditor.person,
    left: club.left.person,
    stranger: other.teams[0].coach.person,
  }
  const member = (memberId: string, role: RoleName, teamId: string | null): Asker => ({
    memberId,
    clubId: club.clubId,
    roles: [{ role, teamId }],
  })
  return {
    live,
    database,
    club,
    people,
    objects: {
      own,
      'other team': objectsOf(club, second, await report(club, 1)),
      'other club': foreign,
      'random club': { ...foreign, clubId: randomObjects('').teamId },
      'random id': randomObjects(club.clubId),
    },
    members: {
      administrator: member(club.administratorId, 'administrator', null),
      director: member(club.director.memberId, 'director', null),
      coach: member(first.coach.memberId, 'coach', first.teamId),
      assistant: member(first.assistant.memberId, 'assistant', first.teamId),
      auditor: member(club.auditor.memberId, 'auditor', null),
    },
  }
}

async function report(club: FurnishedClub, place: 0 | 1): Promise<{ recordId: string; entryId: string }> {
  const team = club.teams[place]
  const operation = reportOf(team, [club.stageId])
  const path = pathTo(paths.operations, { clubId: club.clubId })
  const answer = expectStatus(await team.coach.person.send('POST', path, { operations: [operation] }), 200)
  const [result] = answer.json.results
  if (result.status !== 'applied') throw new Error(answer.text)
  return { recordId: operation.id, entryId: result.entry }
}

export type Cell = { readonly route: LiveRoute; readonly asker: AskerName; readonly kind: ObjectKind }

/** Every live route of a club × everybody × everything it could be asked about. */
export function listCells(routes: readonly LiveRoute[]): readonly Cell[] {
  return (
    routes
      .filter(({ access }) => access?.kind === 'member')
      .flatMap((route) => ASKERS.flatMap((asker) => OBJECT_KINDS.map((kind) => ({ route, asker, kind }))))
      // The other club is the stranger's own.
      .filter(({ asker, kind }) => asker !== 'stranger' || kind !== 'other club')
  )
}

export type Expected = 'answered' | 401 | 403 | 404

/** What the policy says, worked out from the table and not from the server. */
export function expectedOf(world: World, { route, asker, kind }: Cell): Expected {
  // Leaving ends every login, so whoever has left is nobody.
  if (asker === 'anonymous' || asker === 'left') return 401
  const member = world.members[asker]
  if (member === undefined || kind === 'other club' || kind === 'random club') return 404
  const { target } = caseOf(route)
  const permission = permissionOf(route)
  if (target === 'list') return expectedOfList(member, permission, kind, route)
  const isNamed = /:(?!clubId)/.test(route.url) || route.url === paths.coverageCell
  if (kind === 'random id' && isNamed) return 404
  const teamId = target === 'team' ? world.objects[kind].teamId : null
  return statusOf(decideAccess(member, permission, { teamId }, accessRules))
}

function expectedOfList(member: Asker, permission: Permission, kind: ObjectKind, route: LiveRoute): Expected {
  const reach = listTeamsInReach(member, permission, accessRules)
  if (reach.kind === 'own-teams' && reach.teamIds.length === 0) return statusOf(decideAccess(member, permission, {}))
  return kind === 'random id' && route.url === paths.coverage ? 404 : 'answered'
}

function statusOf(decision: ReturnType<typeof decideAccess>): Expected {
  return decision === 'allowed' ? 'answered' : decision === 'forbidden' ? 403 : 404
}

export function caseOf(route: LiveRoute): RouteCase {
  const found = ROUTE_CASES[`${route.method} ${route.url}`]
  if (found === undefined) throw new Error(`the matrix does not know how to ask ${route.method} ${route.url}`)
  return found
}

function permissionOf(route: LiveRoute): Permission {
  if (route.access?.kind !== 'member') throw new Error(`${route.url} names no permission`)
  return route.access.permission
}

export async function ask(world: World, cell: Cell): Promise<Answer> {
  const request = caseOf(cell.route).make(world.objects[cell.kind])
  const person = world.people[cell.asker]
  if (cell.route.method === 'GET') return person.get(request.path)
  const fromVersion = request.versioned === undefined ? undefined : await versionOf(world, request.versioned)
  const method = cell.route.method as 'POST' | 'PUT' | 'DELETE'
  return person.send(method, request.path, request.body, fromVersion === undefined ? {} : { fromVersion })
}

async function versionOf(world: World, versioned: { table: string; key: string; id: string }): Promise<number> {
  const { table, key, id } = versioned
  const rows = await asOwner<{ version: number }>(world.database, `select version from ${table} where ${key} = $1`, [
    id,
  ])
  // What is not there yet has been written no time.
  return rows[0]?.version ?? 0
}

/** Null where the server did as the policy says, else what it did instead. */
export function difference(expected: Expected, answer: Answer): string | null {
  const refusals = [401, 403, 404]
  const isRight =
    expected === 'answered' ? answer.status < 500 && !refusals.includes(answer.status) : answer.status === expected
  return isRight ? null : `expected ${expected}, got ${answer.status} ${answer.json?.code ?? ''}`
}

/** An answer as an outsider can compare it: without the request id, the time of day, and how often they have asked. */
export function comparable(answer: Answer): string {
  const { date: _date, ratelimit: _rate, 'ratelimit-policy': _policy, ...headers } = answer.headers
  const text = answer.text.replace(/urn:uuid:[0-9a-f-]{36}/g, 'urn:uuid:…')
  return JSON.stringify([answer.status, headers, text])
}
