import type { Me } from '@espalier/contract/sign-in'
import { shellMessage } from '../messages/shell'
import { pages, pageTo } from '../paths'

type MyClub = Me['clubs'][number]
type RoleName = MyClub['roles'][number]['role']

export type Way = { readonly title: string; readonly href: string }
/** A way with what is found there. */
export type SaidWay = Way & { readonly about: string }

/** Where someone goes with one team. */
type TeamWays = { readonly tonight: Way; readonly squad: Way; readonly reach: Way }

type WayName = 'people' | 'teams' | 'spaces' | 'patterns' | 'ageProfiles' | 'curricula' | 'coverage' | 'ledger'

const WAY_NAMES = ['curricula', 'patterns', 'ageProfiles', 'coverage', 'teams', 'spaces', 'people', 'ledger'] as const

/**
 * The pages of each role, to spare people doors that are shut. The API decides who may see what; this only leaves out
 * ways that it would refuse.
 */
const WAYS_OF_ROLE = {
  administrator: ['people', 'teams', 'spaces', 'coverage', 'ledger'],
  director: ['curricula', 'patterns', 'ageProfiles', 'coverage', 'teams', 'spaces', 'people', 'ledger'],
  coach: ['patterns', 'curricula', 'spaces', 'coverage', 'ledger'],
  assistant: ['patterns', 'curricula', 'spaces'],
  auditor: ['coverage', 'ledger', 'curricula', 'patterns', 'teams', 'spaces', 'people'],
} as const satisfies Record<RoleName, readonly WayName[]>

const WORDS = {
  people: ['goPeople', 'sayPeople'],
  teams: ['goTeams', 'sayTeams'],
  spaces: ['goSpaces', 'saySpaces'],
  patterns: ['goPatterns', 'sayPatterns'],
  ageProfiles: ['goAgeProfiles', 'sayAgeProfiles'],
  curricula: ['goCurricula', 'sayCurricula'],
  coverage: ['goCoverage', 'sayCoverage'],
  ledger: ['goLedger', 'sayLedger'],
} as const satisfies Record<WayName, readonly [string, string]>

/** Tonight's page, squad and reach of each team that someone coaches or assists. */
export function teamWays(club: MyClub): readonly TeamWays[] {
  const teams = new Map<string, string>()
  for (const { role, teamId, teamName } of club.roles) {
    if ((role === 'coach' || role === 'assistant') && teamId !== null) teams.set(teamId, teamName ?? '')
  }
  return [...teams].map(([teamId, team]) => ({
    tonight: {
      title: shellMessage('goTonight', { team }),
      href: pageTo(pages.field, {}, { club: club.clubId, team: teamId }),
    },
    squad: {
      title: shellMessage('goSquad', { team }),
      href: pageTo(pages.squad, { clubId: club.clubId, teamId }),
    },
    reach: {
      title: shellMessage('goReach', { team }),
      href: `${pageTo(pages.team, { clubId: club.clubId, teamId })}#reach`,
    },
  }))
}

/** The club's pages that at least one of someone's roles leads to, each once and always in the same order. */
export function clubWays(club: MyClub): readonly SaidWay[] {
  const open = new Set<WayName>(club.roles.flatMap(({ role }): readonly WayName[] => WAYS_OF_ROLE[role]))
  return WAY_NAMES.filter((name) => open.has(name)).map((name) => ({
    title: shellMessage(WORDS[name][0]),
    about: shellMessage(WORDS[name][1]),
    href: pageTo(pages[name], { clubId: club.clubId }),
  }))
}
