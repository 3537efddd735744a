import { describe, expect, test } from 'vitest'
import { type AccessDecision, type AccessRules, accessRules, decideAccess, listTeamsInReach } from './decide-access'
import { rolesInWords, sharedByTheWholeClub } from './fixtures/roles-in-words'
import { type Permission, permissions, seenThrough } from './permissions'
import { type Member, type MemberRole, type Role, roleReach, roles } from './roles'

const OWN = '0199c0de-0000-7000-8000-00000000000a'
const OTHER = '0199c0de-0000-7000-8000-00000000000b'

function memberWith(...held: readonly MemberRole[]): Member {
  return {
    memberId: '0199c0de-0000-7000-8000-0000000000ff',
    clubId: '0199c0de-0000-7000-8000-0000000000cc',
    roles: held,
  }
}

function memberAs(role: Role): Member {
  return memberWith({ role, teamId: roleReach[role] === 'team' ? OWN : null })
}

const everyPermission = Object.keys(permissions) as Permission[]
const targets = {
  'the own team': { teamId: OWN },
  'another team': { teamId: OTHER },
  'the whole club': {},
  'the whole club, said as null': { teamId: null },
} as const
type TargetName = keyof typeof targets
const everyTarget = Object.keys(targets) as TargetName[]

function expectedDecision(role: Role, permission: Permission, target: TargetName): AccessDecision {
  const words = rolesInWords[role]
  const own = target === 'the own team'
  if (words.mayEverywhere.includes(permission)) return 'allowed'
  if (own && words.mayOnOwnTeam.includes(permission)) return 'allowed'
  if (words.mayOnlySeeEverywhere.includes(permission)) return 'forbidden'
  if (own && words.mayOnlySeeOnOwnTeam.includes(permission)) return 'forbidden'
  return 'hidden'
}

/** Every cell of the matrix where the rules decide otherwise than the words. */
function listDisagreements(rules: AccessRules, role: Role): readonly string[] {
  return everyPermission.flatMap((permission) =>
    everyTarget
      .filter((name) => {
        const decision = decideAccess(memberAs(role), permission, targets[name], rules)
        return decision !== expectedDecision(role, permission, name)
      })
      .map((name) => `${role} ${permission} on ${name}`),
  )
}

describe('the table says what the design says in words, for every permission and target', () => {
  test.each(roles)('%s', (role) => {
    expect(listDisagreements(accessRules, role)).toEqual([])
  })
  test('no role is said to have a permission in two ways', () => {
    for (const role of roles) {
      const said = Object.values(rolesInWords[role]).flat()
      expect(new Set(said).size).toBe(said.length)
    }
  })
})

describe('changing any one rule of the table turns the matrix red', () => {
  test.each(roles)('a grant of the %s', (role) => {
    const scopes = roleReach[role] === 'team' ? (['club', 'own-team', 'none'] as const) : (['club', 'none'] as const)
    const survivors = everyPermission.flatMap((permission) =>
      scopes
        .filter((scope) => scope !== permissions[permission][role])
        .filter((scope) => {
          const changed = { ...permissions, [permission]: { ...permissions[permission], [role]: scope } }
          return listDisagreements({ permissions: changed, seenThrough }, role).length === 0
        })
        .map((scope) => `${permission} ${scope}`),
    )
    expect(survivors).toEqual([])
  })

  function listSurvivors(through: (permission: Permission) => Permission): readonly Permission[] {
    return everyPermission.filter((permission) => {
      const changed = { ...seenThrough, [permission]: through(permission) }
      const rules = { permissions, seenThrough: changed }
      return (
        through(permission) !== seenThrough[permission] &&
        roles.every((role) => listDisagreements(rules, role).length === 0)
      )
    })
  }
  test('what everyone in the club would see', () => {
    // Only what the whole club shares anyway stays as it is.
    expect(listSurvivors(() => 'club.read')).toEqual([
      'seasons.read',
      'seasons.write',
      'patterns.read-published',
      'versions.read',
    ])
  })
  test('what nobody but its doers would see', () => {
    expect(listSurvivors((permission) => permission)).toEqual([])
  })
})

describe('the table is sound in itself', () => {
  test.each(everyPermission)('whoever may %s also sees the thing', (permission) => {
    for (const role of roles) {
      for (const target of Object.values(targets)) {
        if (decideAccess(memberAs(role), permission, target) !== 'allowed') continue
        expect(decideAccess(memberAs(role), seenThrough[permission], target)).toBe('allowed')
      }
    }
  })
  test('things are seen through permissions to read', () => {
    for (const seen of Object.values(seenThrough)) {
      expect(seen).toMatch(/\.read/)
      expect(seenThrough[seen]).toBe(seen)
    }
  })
  test('a role in the whole club is never granted an own team', () => {
    for (const role of roles.filter((each) => roleReach[each] === 'club')) {
      for (const permission of everyPermission) expect(permissions[permission][role]).not.toBe('own-team')
    }
  })
  test('an auditor changes nothing: reads, reveals, exports and draws', () => {
    const granted = everyPermission.filter((permission) => permissions[permission].auditor !== 'none')
    for (const permission of granted) expect(permission).toMatch(/\.(read|reveal|export|draw)/)
  })
})

describe('someone who should know of nothing gets the answer for a missing thing', () => {
  test.each<[string, Member]>([
    ['a member without a role', memberWith()],
    ['an administrator bound to a team', memberWith({ role: 'administrator', teamId: OWN })],
    ['a director bound to a team', memberWith({ role: 'director', teamId: OWN })],
    ['an auditor bound to a team', memberWith({ role: 'auditor', teamId: OWN })],
  ])('%s', (_, member) => {
    for (const permission of everyPermission) {
      for (const target of Object.values(targets)) expect(decideAccess(member, permission, target)).toBe('hidden')
    }
  })
})

test('a coach without a team reads what the whole club shares and no team', () => {
  const member = memberWith({ role: 'coach', teamId: null })
  const allowed = everyPermission.filter((permission) =>
    Object.values(targets).some((target) => decideAccess(member, permission, target) === 'allowed'),
  )
  expect(allowed.sort()).toEqual([...sharedByTheWholeClub].sort())
})

describe('several roles add up', () => {
  const both = memberWith({ role: 'director', teamId: null }, { role: 'coach', teamId: OWN })
  test('a director who coaches reads the names of that team only', () => {
    expect(decideAccess(both, 'squad.read-names', { teamId: OWN })).toBe('allowed')
    expect(decideAccess(both, 'squad.read-names', { teamId: OTHER })).toBe('forbidden')
  })
  test('an assistant of one team who coaches another does not take rights across', () => {
    const member = memberWith({ role: 'assistant', teamId: OWN }, { role: 'coach', teamId: OTHER })
    expect(decideAccess(member, 'versions.adopt', { teamId: OTHER })).toBe('allowed')
    expect(decideAccess(member, 'versions.adopt', { teamId: OWN })).toBe('forbidden')
  })
  test('no second role takes anything away', () => {
    const order: readonly AccessDecision[] = ['hidden', 'forbidden', 'allowed']
    for (const first of roles) {
      for (const second of roles) {
        const together = memberWith(...memberAs(first).roles, ...memberAs(second).roles)
        for (const permission of everyPermission) {
          for (const target of Object.values(targets)) {
            const alone = decideAccess(memberAs(first), permission, target)
            const added = decideAccess(together, permission, target)
            expect(order.indexOf(added)).toBeGreaterThanOrEqual(order.indexOf(alone))
          }
        }
      }
    }
  })
})

describe('a list shows exactly the teams that single answers would allow', () => {
  test('the whole club for a director', () => {
    expect(listTeamsInReach(memberAs('director'), 'teams.read')).toEqual({ kind: 'whole-club' })
  })
  test('own teams, each once and in a fixed order, for a coach and assistant', () => {
    const member = memberWith(
      { role: 'assistant', teamId: OTHER },
      { role: 'coach', teamId: OWN },
      { role: 'assistant', teamId: OWN },
      { role: 'coach', teamId: null },
    )
    expect(listTeamsInReach(member, 'teams.read')).toEqual({ kind: 'own-teams', teamIds: [OWN, OTHER] })
    expect(listTeamsInReach(member, 'coverage.read')).toEqual({ kind: 'own-teams', teamIds: [OWN] })
  })
  test('nothing for someone without the permission', () => {
    expect(listTeamsInReach(memberAs('assistant'), 'coverage.read')).toEqual({ kind: 'own-teams', teamIds: [] })
    expect(listTeamsInReach(memberWith(), 'teams.read')).toEqual({ kind: 'own-teams', teamIds: [] })
  })
  test('the same as one decision for each team', () => {
    for (const role of roles) {
      for (const permission of everyPermission) {
        const reach = listTeamsInReach(memberAs(role), permission)
        for (const teamId of [OWN, OTHER]) {
          const shown = reach.kind === 'whole-club' || reach.teamIds.includes(teamId)
          expect(shown).toBe(decideAccess(memberAs(role), permission, { teamId }) === 'allowed')
        }
      }
    }
  })
})
