import { type Grants, type Permission, permissions, seenThrough } from './permissions'
import { type Member, type MemberRole, roleReach } from './roles'

/** 'forbidden': may see the thing but not do this (403). 'hidden': the answer for a missing thing (404). */
export type AccessDecision = 'allowed' | 'forbidden' | 'hidden'

/** The team that the thing belongs to; without one it is the whole club's, out of reach of an own-team permission. */
export type AccessTarget = { readonly teamId?: string | null }

/** The table as an argument, so that a test can change one rule and watch the matrix go red. */
export type AccessRules = {
  readonly permissions: Readonly<Record<Permission, Grants>>
  readonly seenThrough: Readonly<Record<Permission, Permission>>
}

export const accessRules: AccessRules = { permissions, seenThrough }

/** The one decision of who may do what, inside the club of the member. Anything the table does not give is refused. */
export function decideAccess(
  member: Member,
  permission: Permission,
  target: AccessTarget,
  rules: AccessRules = accessRules,
): AccessDecision {
  if (may(member, permission, target, rules)) return 'allowed'
  return may(member, rules.seenThrough[permission], target, rules) ? 'forbidden' : 'hidden'
}

/** What a list may show: everything, or the things of these teams only (none of them: an empty list). */
export type TeamsInReach =
  | { readonly kind: 'whole-club' }
  | { readonly kind: 'own-teams'; readonly teamIds: readonly string[] }

export function listTeamsInReach(
  member: Member,
  permission: Permission,
  rules: AccessRules = accessRules,
): TeamsInReach {
  if (may(member, permission, {}, rules)) return { kind: 'whole-club' }
  const teamIds = member.roles
    .filter((held) => scopeOf(held, permission, rules) === 'own-team')
    .flatMap(({ teamId }) => teamId ?? [])
  return { kind: 'own-teams', teamIds: [...new Set(teamIds)].sort() }
}

function may(member: Member, permission: Permission, target: AccessTarget, rules: AccessRules): boolean {
  return member.roles.some((held) => {
    const scope = scopeOf(held, permission, rules)
    if (scope === 'club') return true
    return scope === 'own-team' && held.teamId !== null && held.teamId === target.teamId
  })
}

function scopeOf(held: MemberRole, permission: Permission, rules: AccessRules): Grants[keyof Grants] {
  // A club-wide role bound to a team is a damaged row; which of the two was meant is not ours to guess.
  if (roleReach[held.role] === 'club' && held.teamId !== null) return 'none'
  return rules.permissions[permission][held.role]
}
