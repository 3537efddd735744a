import type { AccessTarget, Member, Permission, TeamsInReach } from '@espalier/domain/access'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type ClubDb, withClub } from '../db/with-club'
import type { Deps } from '../deps'
import type { Login } from '../http/logins'
import type { Refusal } from '../http/problem-error'
import { checkAccess, checkReach } from './check-access'
import { findMember } from './member'

export type Query<Found, Value> = {
  readonly permission: Permission
  /** What the policy is asked about; null where the thing does not exist. */
  readonly find: (db: ClubDb) => Promise<Found | null>
  readonly target: (found: Found) => AccessTarget
  readonly read: (db: ClubDb, found: Found, member: Member) => Promise<Value | null>
}

/** Reads one thing as one member sees it. What is missing and what is hidden give the same answer. */
export function runQuery<Found, Value>(
  deps: Deps,
  login: Login,
  clubId: string,
  query: Query<Found, Value>,
): Promise<Result<Value, Refusal>> {
  return withClub(deps.pools, clubId, async (db): Promise<Result<Value, Refusal>> => {
    const member = await findMember(db, login.accountId)
    if (member === null) return refuse({ code: 'not-found' })
    const found = await query.find(db)
    if (found === null) return refuse({ code: 'not-found' })
    const allowed = checkAccess(deps.accessRules, member, query.permission, query.target(found))
    if (!allowed.ok) return allowed
    const value = await query.read(db, found, member)
    return value === null ? refuse({ code: 'not-found' }) : ok(value)
  })
}

export type ListQuery<Value> = {
  readonly permission: Permission
  readonly read: (db: ClubDb, reach: TeamsInReach, member: Member) => Promise<Value | null>
}

/** Reads a list as far as one member's permission reaches: the whole club or the own teams. */
export function runListQuery<Value>(
  deps: Deps,
  login: Login,
  clubId: string,
  query: ListQuery<Value>,
): Promise<Result<Value, Refusal>> {
  return withClub(deps.pools, clubId, async (db): Promise<Result<Value, Refusal>> => {
    const member = await findMember(db, login.accountId)
    if (member === null) return refuse({ code: 'not-found' })
    const reach = checkReach(deps.accessRules, member, query.permission)
    if (!reach.ok) return reach
    const value = await query.read(db, reach.value, member)
    return value === null ? refuse({ code: 'not-found' }) : ok(value)
  })
}
