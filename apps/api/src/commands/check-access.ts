import {
  type AccessRules,
  type AccessTarget,
  decideAccess,
  listTeamsInReach,
  type Member,
  type Permission,
  type TeamsInReach,
} from '@espalier/domain/access'
import { ok, type Result, refuse, unreachable } from '@espalier/domain/quantities'
import type { Refusal } from '../http/problem-error'

/** Hidden things answer like missing ones; who may see a thing but not do this is told so. */
export function checkAccess(
  rules: AccessRules,
  member: Member,
  permission: Permission,
  target: AccessTarget,
): Result<true, Refusal> {
  const access = decideAccess(member, permission, target, rules)
  switch (access) {
    case 'allowed':
      return ok(true)
    case 'forbidden':
      return refuse({ code: 'not-allowed' })
    case 'hidden':
      return refuse({ code: 'not-found' })
    default:
      return unreachable(access)
  }
}

/** What a list may show; a list of which nothing could ever be shown is no list for this member. */
export function checkReach(rules: AccessRules, member: Member, permission: Permission): Result<TeamsInReach, Refusal> {
  const reach = listTeamsInReach(member, permission, rules)
  if (reach.kind === 'whole-club' || reach.teamIds.length > 0) return ok(reach)
  return decideAccess(member, permission, {}, rules) === 'forbidden'
    ? refuse({ code: 'not-allowed' })
    : refuse({ code: 'not-found' })
}

/** For queries: null means every team. */
export function teamIdsOf(reach: TeamsInReach): readonly string[] | null {
  return reach.kind === 'whole-club' ? null : reach.teamIds
}
