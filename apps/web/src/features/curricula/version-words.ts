import type { Team } from '@espalier/contract/places'
import { todayIn } from '../../shell/dates'

/** Digits of a hash that people compare by eye; the whole stands one press away. */
const SHORT_HASH = 12

export function shortHash(hash: string): string {
  return hash.slice(0, SHORT_HASH)
}

/** The calendar day of an instant in the club's zone. */
export function dayOf(instant: string, zone: string): string {
  return todayIn(zone, new Date(instant))
}

/** Teams that follow a version now. */
export function followersOf(teams: readonly Team[], curriculumId: string, number: number): readonly Team[] {
  return teams.filter(({ follows }) => follows?.curriculumId === curriculumId && follows.number === number)
}

/** Teams someone may move: any for a director, the own ones for a coach where the club allows it. */
export function teamsToMove(
  teams: readonly Team[],
  roles: readonly { readonly role: string; readonly teamId: string | null }[],
  coachesAdopt: boolean,
): readonly Team[] {
  if (roles.some(({ role }) => role === 'director')) return teams
  if (!coachesAdopt) return []
  return teams.filter(({ teamId }) => roles.some((held) => held.role === 'coach' && held.teamId === teamId))
}
