import { createHash, randomBytes } from 'node:crypto'
import { paths, pathTo } from '@espalier/contract/paths'
import type { DraftDocument } from '@espalier/domain/curriculum'
import type { PatternDocument } from '@espalier/domain/pattern'
import { minutes } from '@espalier/domain/quantities'
import { roundTheBack, wallOnTheRight } from '../../prisma/demo/patterns'
import { freshId } from '../support/database'
import type { TestApi } from './api'
import { addMember, addSeason, addTeam, expectStatus, type Member, makeClub, type TestClub } from './club'

/** One team with everything that hangs on it; `canary` stands in the name of every child. */
export type FurnishedTeam = {
  readonly teamId: string
  readonly canary: string
  readonly playerId: string
  readonly dateIds: readonly string[]
  readonly coach: Member
  readonly assistant: Member
}

export type FurnishedClub = TestClub & {
  /** Stands in every text of the club that is not a child's name. */
  readonly canary: string
  readonly seasonId: string
  readonly spaceId: string
  readonly patternId: string
  readonly curriculumId: string
  readonly stageId: string
  readonly director: Member
  readonly auditor: Member
  readonly left: Member
  /** Somebody whom a test may rename or give another role. */
  readonly spare: Member
  readonly teams: readonly [FurnishedTeam, FurnishedTeam]
}

/** Sixteen hexadecimal digits that nobody else has. */
export function newCanary(): string {
  return randomBytes(8).toString('hex')
}

/** A club with two teams, dates, squads, a published curriculum that both teams follow, and one of each role. */
export async function makeFurnishedClub(api: TestApi): Promise<FurnishedClub> {
  const canary = newCanary()
  const club = await makeClub(api, `Club ${canary}`)
  const seasonId = await addSeason(club, `Season ${canary}`)
  const spaceId = await addSpace(club, canary)
  const director = await addMember(club, [{ role: 'director', teamId: null }], `Director ${canary}`)
  const auditor = await addMember(club, [{ role: 'auditor', teamId: null }], `Auditor ${canary}`)
  const left = await addMember(club, [{ role: 'director', teamId: null }], `Left ${canary}`)
  const spare = await addMember(club, [{ role: 'auditor', teamId: null }], `Spare ${canary}`)
  const patternId = await addPattern(club, director, { ...wallOnTheRight, title: `Pattern ${canary}` })
  const draft = makeDraft(patternId, canary)
  const curriculumId = await publishCurriculum(club, director, draft)
  const first = await furnishTeam(club, { seasonId, spaceId, name: `First ${canary}`, curriculumId, director })
  const second = await furnishTeam(club, { seasonId, spaceId, name: `Second ${canary}`, curriculumId, director })
  await leave(club, left.memberId)
  const stageId = draft.progressions[0]!.stages[0]!.stageId
  const teams = [first, second] as const
  return { ...club, canary, seasonId, spaceId, patternId, curriculumId, stageId, director, auditor, left, spare, teams }
}

export async function addSpace(club: TestClub, words: string): Promise<string> {
  const id = freshId()
  const body = { id, space: spaceOf(words) }
  expectStatus(await club.administrator.send('POST', pathTo(paths.spaces, { clubId: club.clubId }), body), 201)
  return id
}

/** Half a pitch that is wider than it is long. */
export function spaceOf(words: string) {
  return {
    name: `Half ${words}`,
    venue: `Venue ${words}`,
    lengthMm: 27_400,
    widthMm: 36_600,
    covers: 'half',
    formatId: 'us-7v7',
    markings: {
      boundary: 'painted',
      'goal-area': 'painted',
      'penalty-area': 'painted',
      'penalty-mark': 'none',
      'build-out-line': 'flags',
      halfway: 'painted',
      'centre-circle': 'none',
    },
    goals: [{ end: 'own', widthMm: 5_640, movable: true }],
  }
}

export async function addPattern(
  club: TestClub,
  director: Member,
  document: PatternDocument = roundTheBack,
): Promise<string> {
  const id = freshId()
  const path = pathTo(paths.patterns, { clubId: club.clubId })
  expectStatus(await director.person.send('POST', path, { id, document }), 201)
  return id
}

/** Three stages of one pattern and a model session. */
export function makeDraft(patternId: string, words: string): DraftDocument {
  const stage = (title: string, pressure: 'none' | 'poles' | 'x1') => ({
    stageId: freshId(),
    title: `${title} ${words}`,
    patternId,
    form: { kind: 'full' } as const,
    pressure,
    conditions: [],
  })
  return {
    v: 1,
    name: `Curriculum ${words}`,
    ageGroup: 'U10',
    formatId: 'us-7v7',
    progressions: [
      {
        progressionId: freshId(),
        title: `Progression ${words}`,
        stages: [stage('Places', 'none'), stage('Poles', 'poles'), stage('Against one', 'x1')],
        after: [],
      },
    ],
    modelSessions: [
      {
        modelSessionId: freshId(),
        title: `Session ${words}`,
        activities: [
          {
            activityId: freshId(),
            kind: 'pattern',
            title: `Activity ${words}`,
            minutes: minutes(20),
            stageId: null,
            conditions: [],
            points: [],
          },
        ],
      },
    ],
  }
}

export async function publishCurriculum(club: TestClub, director: Member, document: DraftDocument): Promise<string> {
  const { clubId } = club
  const curriculumId = freshId()
  const created = { id: curriculumId, document }
  expectStatus(await director.person.send('POST', pathTo(paths.curricula, { clubId }), created), 201)
  const publication = { id: freshId() }
  const path = pathTo(paths.versions, { clubId, curriculumId })
  expectStatus(await director.person.send('POST', path, publication, { fromVersion: 1 }), 201)
  return curriculumId
}

type TeamWish = {
  readonly seasonId: string
  readonly spaceId: string
  readonly name: string
  readonly curriculumId: string
  readonly director: Member
}

async function furnishTeam(club: TestClub, wish: TeamWish): Promise<FurnishedTeam> {
  const { clubId, administrator } = club
  const teamId = await addTeam(club, wish.seasonId, wish.name)
  const slot = { id: freshId(), spaceId: wish.spaceId, ...TUESDAYS }
  expectStatus(await administrator.send('POST', pathTo(paths.slots, { clubId, teamId }), slot), 201)
  const canary = newCanary()
  const playerId = await importChildren(club, teamId, canary)
  const coach = await addMember(club, [{ role: 'coach', teamId }], `Coach of ${wish.name}`)
  const assistant = await addMember(club, [{ role: 'assistant', teamId }], `Assistant of ${wish.name}`)
  const adoption = { id: freshId(), curriculumId: wish.curriculumId, number: 1, fromDate: '2026-09-01' }
  const adopted = await wish.director.person.send('POST', pathTo(paths.adoptions, { clubId, teamId }), adoption)
  expectStatus(adopted, 201)
  const reach = { strongFootMm: 14_000, otherFootMm: 9_000, measuredOn: '2026-09-01' }
  const reachPath = pathTo(paths.reach, { clubId, teamId })
  expectStatus(await coach.person.send('PUT', reachPath, reach, { fromVersion: 0 }), 200)
  const dates = expectStatus(await administrator.get(pathTo(paths.dates, { clubId, teamId })), 200).json.dates
  return { teamId, canary, playerId, dateIds: dates.map(({ dateId }: { dateId: string }) => dateId), coach, assistant }
}

export const TUESDAYS = {
  weekday: 2,
  localStart: '17:30',
  minutes: 75,
  validFrom: '2026-09-01',
  validTo: '2026-12-20',
}

async function importChildren(club: TestClub, teamId: string, canary: string): Promise<string> {
  const players = Array.from({ length: 8 }, (_, at) => childOf(`${at}${canary}`, at + 1))
  const path = pathTo(paths.squadImports, { clubId: club.clubId, teamId })
  expectStatus(await club.administrator.send('POST', path, { id: freshId(), players }), 201)
  return players[0]!.id
}

export function childOf(shortName: string, shirt: number | null) {
  return { id: freshId(), shortName, shirt, home: 'CM', stretch: 'RW', goalkeeper: 'sometimes', foot: 'right' }
}

async function leave(club: TestClub, memberId: string): Promise<void> {
  const body = { displayName: 'Left', roles: [], left: true }
  const path = pathTo(paths.person, { clubId: club.clubId, memberId })
  expectStatus(await club.administrator.send('PUT', path, body, { fromVersion: 1 }), 200)
}

/** The report of an evening as a phone sends it. */
export function reportOf(
  team: FurnishedTeam,
  stageIds: readonly string[],
  changed: Readonly<Record<string, unknown>> = {},
) {
  const body = {
    teamId: team.teamId,
    dateId: team.dateIds[0],
    planId: null,
    turnout: 8,
    guests: 0,
    minutes: 75,
    stages: stageIds.map((stageId) => ({ stageId, pressureReached: 'poles', minutes: 20, gotOut: 'half' })),
    secondAdult: null,
    changes: [],
    supersedes: null,
    ...changed,
  }
  return { op: 'report-session', v: 1, id: freshId(), at: '2026-09-15T18:00:00.000Z', zone: 'Europe/London', body }
}

export function sha256Hex(text: string): string {
  return createHash('sha256').update(text).digest('hex')
}
