import { examples } from '@espalier/contract/examples'
import { paths, pathTo } from '@espalier/contract/paths'
import { roundTheBack } from '../../prisma/demo/patterns'
import {
  childOf,
  type FurnishedClub,
  type FurnishedTeam,
  makeDraft,
  reportOf,
  spaceOf,
  TUESDAYS,
} from '../factories/furnished-club'
import { newSecret } from '../factories/person'
import { freshId } from '../support/database'

/** The ids that a request names; each kind of object in the matrix is another set of them. */
export type Objects = {
  readonly clubId: string
  readonly seasonId: string
  readonly spaceId: string
  readonly patternId: string
  readonly curriculumId: string
  readonly stageId: string
  readonly memberId: string
  readonly teamId: string
  readonly playerId: string
  readonly dateId: string
  readonly recordId: string
  readonly entryId: string
}

export type Request = {
  readonly path: string
  readonly body?: unknown
  /** An edit names the version it was made from; the matrix looks it up. */
  readonly versioned?: { readonly table: string; readonly key: string; readonly id: string }
}

/** What the target of a route is, for the policy: nothing smaller than the club, or one team. */
export type RouteTarget = 'club' | 'team' | 'list'

export type RouteCase = { readonly target: RouteTarget; readonly make: (objects: Objects) => Request }

const fresh = (word: string) => `${word} ${freshId().slice(-12)}`

/** How to ask each route about a set of objects, with a body that is right in itself. A live route without a case is red. */
export const ROUTE_CASES: Readonly<Record<string, RouteCase>> = {
  [`GET ${paths.club}`]: { target: 'club', make: ({ clubId }) => ({ path: pathTo(paths.club, { clubId }) }) },
  [`PUT ${paths.settings}`]: {
    target: 'club',
    make: ({ clubId }) => ({
      path: pathTo(paths.settings, { clubId }),
      body: examples.limits,
      versioned: { table: 'club', key: 'club_id', id: clubId },
    }),
  },
  [`GET ${paths.people}`]: { target: 'list', make: ({ clubId }) => ({ path: pathTo(paths.people, { clubId }) }) },
  [`POST ${paths.people}`]: {
    target: 'club',
    make: ({ clubId }) => ({
      path: pathTo(paths.people, { clubId }),
      body: { id: freshId(), displayName: 'New', roles: [{ role: 'auditor', teamId: null }] },
    }),
  },
  [`PUT ${paths.person}`]: {
    target: 'club',
    make: ({ clubId, memberId }) => ({
      path: pathTo(paths.person, { clubId, memberId }),
      body: { displayName: 'Renamed', roles: [{ role: 'auditor', teamId: null }], left: false },
      versioned: { table: 'membership', key: 'member_id', id: memberId },
    }),
  },
  [`POST ${paths.signInLinks}`]: {
    target: 'club',
    make: ({ clubId, memberId }) => ({
      path: pathTo(paths.signInLinks, { clubId, memberId }),
      body: { id: freshId(), tokenHash: newSecret().hash.toString('hex') },
    }),
  },
  [`GET ${paths.seasons}`]: { target: 'list', make: ({ clubId }) => ({ path: pathTo(paths.seasons, { clubId }) }) },
  [`POST ${paths.seasons}`]: {
    target: 'club',
    make: ({ clubId }) => ({
      path: pathTo(paths.seasons, { clubId }),
      body: { id: freshId(), name: fresh('Season'), firstDay: '2027-01-01', lastDay: '2027-02-01' },
    }),
  },
  [`GET ${paths.teams}`]: { target: 'list', make: ({ clubId }) => ({ path: pathTo(paths.teams, { clubId }) }) },
  [`POST ${paths.teams}`]: {
    target: 'club',
    make: ({ clubId, seasonId }) => ({
      path: pathTo(paths.teams, { clubId }),
      body: { id: freshId(), seasonId, name: fresh('Team'), ageGroup: 'U10', category: 'mixed', formatId: 'us-7v7' },
    }),
  },
  [`GET ${paths.team}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({ path: pathTo(paths.team, { clubId, teamId }) }),
  },
  [`PUT ${paths.reach}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({
      path: pathTo(paths.reach, { clubId, teamId }),
      body: examples.reach,
      versioned: { table: 'team_reach', key: 'team_id', id: teamId },
    }),
  },
  [`GET ${paths.spaces}`]: { target: 'list', make: ({ clubId }) => ({ path: pathTo(paths.spaces, { clubId }) }) },
  [`POST ${paths.spaces}`]: {
    target: 'club',
    make: ({ clubId }) => ({
      path: pathTo(paths.spaces, { clubId }),
      body: { id: freshId(), space: spaceOf(fresh('new')) },
    }),
  },
  [`PUT ${paths.space}`]: {
    target: 'club',
    make: ({ clubId, spaceId }) => ({
      path: pathTo(paths.space, { clubId, spaceId }),
      body: { space: spaceOf(fresh('again')) },
      versioned: { table: 'space', key: 'space_id', id: spaceId },
    }),
  },
  [`GET ${paths.slots}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({ path: pathTo(paths.slots, { clubId, teamId }) }),
  },
  [`POST ${paths.slots}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({
      path: pathTo(paths.slots, { clubId, teamId }),
      body: { id: freshId(), spaceId: null, ...TUESDAYS, validFrom: '2026-12-19', validTo: '2026-12-19' },
    }),
  },
  [`GET ${paths.dates}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({ path: pathTo(paths.dates, { clubId, teamId }) }),
  },
  [`GET ${paths.equipment}`]: { target: 'list', make: ({ clubId }) => ({ path: pathTo(paths.equipment, { clubId }) }) },
  [`POST ${paths.equipment}`]: {
    target: 'club',
    make: ({ clubId }) => ({
      path: pathTo(paths.equipment, { clubId }),
      body: { id: freshId(), teamId: null, counts: { cone: 9, pole: 2, 'small-goal': 1, ball: 5, bib: 8 } },
      // Only the store is ever counted here.
      versioned: { table: 'equipment', key: 'club_id', id: clubId },
    }),
  },
  [`GET ${paths.squad}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({ path: pathTo(paths.squad, { clubId, teamId }) }),
  },
  [`POST ${paths.squadImports}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({
      path: pathTo(paths.squadImports, { clubId, teamId }),
      body: { id: freshId(), players: [childOf('Extra', null)] },
    }),
  },
  [`PUT ${paths.player}`]: {
    target: 'team',
    make: ({ clubId, teamId, playerId }) => {
      const { id: _, ...edit } = childOf('Same', 1)
      return {
        path: pathTo(paths.player, { clubId, teamId, playerId }),
        body: { ...edit, left: false },
        versioned: { table: 'player', key: 'player_id', id: playerId },
      }
    },
  },
  [`GET ${paths.patterns}`]: { target: 'list', make: ({ clubId }) => ({ path: pathTo(paths.patterns, { clubId }) }) },
  [`POST ${paths.patterns}`]: {
    target: 'club',
    make: ({ clubId }) => ({
      path: pathTo(paths.patterns, { clubId }),
      body: { id: freshId(), document: roundTheBack },
    }),
  },
  [`GET ${paths.pattern}`]: {
    target: 'club',
    make: ({ clubId, patternId }) => ({ path: pathTo(paths.pattern, { clubId, patternId }) }),
  },
  [`PUT ${paths.pattern}`]: {
    target: 'club',
    make: ({ clubId, patternId }) => ({
      path: pathTo(paths.pattern, { clubId, patternId }),
      body: { document: roundTheBack },
      versioned: { table: 'pattern', key: 'pattern_id', id: patternId },
    }),
  },
  [`GET ${paths.curricula}`]: { target: 'list', make: ({ clubId }) => ({ path: pathTo(paths.curricula, { clubId }) }) },
  [`POST ${paths.curricula}`]: {
    target: 'club',
    make: ({ clubId, patternId }) => ({
      path: pathTo(paths.curricula, { clubId }),
      body: { id: freshId(), document: makeDraft(patternId, 'new') },
    }),
  },
  [`GET ${paths.curriculum}`]: {
    target: 'club',
    make: ({ clubId, curriculumId }) => ({ path: pathTo(paths.curriculum, { clubId, curriculumId }) }),
  },
  [`GET ${paths.draft}`]: {
    target: 'club',
    make: ({ clubId, curriculumId }) => ({ path: pathTo(paths.draft, { clubId, curriculumId }) }),
  },
  [`PUT ${paths.draft}`]: {
    target: 'club',
    make: ({ clubId, curriculumId, patternId }) => ({
      path: pathTo(paths.draft, { clubId, curriculumId }),
      body: { document: makeDraft(patternId, 'again') },
      versioned: { table: 'draft', key: 'curriculum_id', id: curriculumId },
    }),
  },
  [`POST ${paths.versions}`]: {
    target: 'club',
    make: ({ clubId, curriculumId }) => ({
      path: pathTo(paths.versions, { clubId, curriculumId }),
      body: { id: freshId() },
      versioned: { table: 'draft', key: 'curriculum_id', id: curriculumId },
    }),
  },
  [`GET ${paths.version}`]: {
    target: 'club',
    make: ({ clubId, curriculumId }) => ({ path: pathTo(paths.version, { clubId, curriculumId, number: 1 }) }),
  },
  [`POST ${paths.adoptions}`]: {
    target: 'team',
    make: ({ clubId, teamId, curriculumId }) => ({
      path: pathTo(paths.adoptions, { clubId, teamId }),
      body: { id: freshId(), curriculumId, number: 1, fromDate: '2026-10-01' },
    }),
  },
  [`GET ${paths.kit}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({ path: pathTo(paths.kit, { clubId, teamId }) }),
  },
  [`POST ${paths.operations}`]: {
    target: 'list',
    make: ({ clubId, teamId, dateId, playerId }) => ({
      path: pathTo(paths.operations, { clubId }),
      body: {
        operations: [
          {
            op: 'mark-attendance',
            v: 1,
            id: freshId(),
            at: '2026-09-15T18:00:00.000Z',
            zone: 'Europe/London',
            body: { teamId, dateId, marks: [{ playerId, came: true }] },
          },
        ],
      },
    }),
  },
  [`GET ${paths.teamRecords}`]: {
    target: 'team',
    make: ({ clubId, teamId }) => ({ path: pathTo(paths.teamRecords, { clubId, teamId }) }),
  },
  [`GET ${paths.record}`]: {
    target: 'team',
    make: ({ clubId, recordId }) => ({ path: pathTo(paths.record, { clubId, recordId }) }),
  },
  [`GET ${paths.coverage}`]: {
    target: 'list',
    make: ({ clubId, seasonId }) => ({ path: pathTo(paths.coverage, { clubId }, { seasonId }) }),
  },
  [`GET ${paths.coverageCell}`]: {
    target: 'team',
    make: ({ clubId, seasonId, teamId, stageId }) => ({
      path: pathTo(paths.coverageCell, { clubId }, { seasonId, teamId, stageId, week: '2026-08-31' }),
    }),
  },
  [`GET ${paths.ledgerHead}`]: {
    target: 'list',
    make: ({ clubId }) => ({ path: pathTo(paths.ledgerHead, { clubId }) }),
  },
  [`GET ${paths.ledgerEntries}`]: {
    target: 'list',
    make: ({ clubId }) => ({ path: pathTo(paths.ledgerEntries, { clubId }) }),
  },
  [`GET ${paths.ledgerInclusion}`]: {
    target: 'team',
    make: ({ clubId, entryId }) => ({ path: pathTo(paths.ledgerInclusion, { clubId, entryId }) }),
  },
  [`GET ${paths.ledgerConsistency}`]: {
    target: 'list',
    make: ({ clubId }) => ({ path: pathTo(paths.ledgerConsistency, { clubId }, { from: '1', to: '2' }) }),
  },
}

/** The things of one team of a club, with a report and its entry. */
export function objectsOf(
  club: FurnishedClub,
  team: FurnishedTeam,
  report: { recordId: string; entryId: string },
): Objects {
  const { clubId, seasonId, spaceId, patternId, curriculumId, stageId } = club
  return {
    clubId,
    seasonId,
    spaceId,
    patternId,
    curriculumId,
    stageId,
    memberId: club.spare.memberId,
    teamId: team.teamId,
    playerId: team.playerId,
    dateId: team.dateIds[0]!,
    ...report,
  }
}

/** Ids that nothing has. */
export function randomObjects(clubId: string): Objects {
  return {
    clubId,
    seasonId: freshId(),
    spaceId: freshId(),
    patternId: freshId(),
    curriculumId: freshId(),
    stageId: freshId(),
    memberId: freshId(),
    teamId: freshId(),
    playerId: freshId(),
    dateId: freshId(),
    recordId: freshId(),
    entryId: freshId(),
  }
}

export { reportOf }
