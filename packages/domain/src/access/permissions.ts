import type { Role } from './roles'

/** Everything that a route can ask for: what it is done to, a dot, what is done. */
export type Permission =
  | 'club.read'
  | 'club.write'
  | 'club-limits.write'
  | 'people.read'
  | 'people.write'
  | 'sign-in-links.make'
  | 'seasons.read'
  | 'seasons.write'
  | 'teams.read'
  | 'teams.write'
  | 'team-reach.write'
  | 'spaces.read'
  | 'spaces.write'
  | 'slots.read'
  | 'slots.write'
  | 'dates.read'
  | 'dates.write'
  | 'equipment.read'
  | 'equipment.write'
  | 'squad.read-counts'
  | 'squad.read-pseudonyms'
  | 'squad.read-names'
  | 'squad.reveal-names'
  | 'squad.write'
  | 'patterns.read-published'
  | 'patterns.read-draft'
  | 'patterns.write'
  | 'curricula.read-draft'
  | 'curricula.write'
  | 'curricula.publish'
  | 'versions.read'
  | 'versions.adopt'
  | 'kit.read'
  | 'evenings.read'
  | 'operations.write'
  | 'records.read'
  | 'records.confirm'
  | 'matches.read'
  | 'matches.write'
  | 'changes.read'
  | 'changes.answer'
  | 'visits.read'
  | 'visits.write'
  | 'coverage.read'
  | 'ledger.read'
  | 'ledger.export'
  | 'spot-checks.read'
  | 'spot-checks.draw'

/** How far a role's permission reaches: any team and the club as a whole, the role's own team, or nowhere. */
export type Scope = 'club' | 'own-team' | 'none'

export type Grants = Readonly<Record<Role, Scope>>

const club = 'club'
const own = 'own-team'
const none = 'none'

/**
 * Who may do what. A coach's and an assistant's "club" is what the whole club shares and what tells nothing about
 * another team: its name, its seasons, its published patterns and versions.
 */
export const permissions = {
  'club.read': { administrator: club, director: club, coach: club, assistant: club, auditor: club },
  'club.write': { administrator: club, director: none, coach: none, assistant: none, auditor: none },
  'club-limits.write': { administrator: none, director: club, coach: none, assistant: none, auditor: none },
  'people.read': { administrator: club, director: club, coach: own, assistant: own, auditor: club },
  'people.write': { administrator: club, director: none, coach: none, assistant: none, auditor: none },
  'sign-in-links.make': { administrator: club, director: none, coach: none, assistant: none, auditor: none },
  'seasons.read': { administrator: club, director: club, coach: club, assistant: club, auditor: club },
  'seasons.write': { administrator: club, director: none, coach: none, assistant: none, auditor: none },
  'teams.read': { administrator: club, director: club, coach: own, assistant: own, auditor: club },
  'teams.write': { administrator: club, director: none, coach: none, assistant: none, auditor: none },
  'team-reach.write': { administrator: none, director: club, coach: own, assistant: none, auditor: none },
  'spaces.read': { administrator: club, director: club, coach: own, assistant: own, auditor: club },
  'spaces.write': { administrator: club, director: club, coach: none, assistant: none, auditor: none },
  'slots.read': { administrator: club, director: club, coach: own, assistant: own, auditor: club },
  'slots.write': { administrator: club, director: club, coach: none, assistant: none, auditor: none },
  'dates.read': { administrator: club, director: club, coach: own, assistant: own, auditor: club },
  'dates.write': { administrator: club, director: club, coach: none, assistant: none, auditor: none },
  'equipment.read': { administrator: club, director: club, coach: own, assistant: own, auditor: club },
  'equipment.write': { administrator: club, director: none, coach: none, assistant: none, auditor: none },

  'squad.read-counts': { administrator: club, director: club, coach: own, assistant: own, auditor: club },
  'squad.read-pseudonyms': { administrator: club, director: none, coach: own, assistant: own, auditor: club },
  'squad.read-names': { administrator: club, director: none, coach: own, assistant: own, auditor: none },
  'squad.reveal-names': { administrator: none, director: none, coach: none, assistant: none, auditor: club },
  'squad.write': { administrator: club, director: none, coach: own, assistant: none, auditor: none },

  'patterns.read-published': { administrator: club, director: club, coach: club, assistant: club, auditor: club },
  'patterns.read-draft': { administrator: club, director: club, coach: none, assistant: none, auditor: club },
  'patterns.write': { administrator: none, director: club, coach: none, assistant: none, auditor: none },
  'curricula.read-draft': { administrator: club, director: club, coach: none, assistant: none, auditor: club },
  'curricula.write': { administrator: none, director: club, coach: none, assistant: none, auditor: none },
  'curricula.publish': { administrator: none, director: club, coach: none, assistant: none, auditor: none },
  'versions.read': { administrator: club, director: club, coach: club, assistant: club, auditor: club },
  'versions.adopt': { administrator: none, director: club, coach: own, assistant: none, auditor: none },

  'kit.read': { administrator: none, director: none, coach: own, assistant: own, auditor: none },
  'evenings.read': { administrator: none, director: club, coach: own, assistant: own, auditor: club },
  'operations.write': { administrator: none, director: none, coach: own, assistant: own, auditor: none },
  'records.read': { administrator: none, director: club, coach: own, assistant: own, auditor: club },
  'records.confirm': { administrator: none, director: none, coach: own, assistant: own, auditor: none },
  'matches.read': { administrator: none, director: club, coach: own, assistant: own, auditor: club },
  'matches.write': { administrator: none, director: none, coach: own, assistant: own, auditor: none },

  'changes.read': { administrator: none, director: club, coach: own, assistant: none, auditor: club },
  'changes.answer': { administrator: none, director: club, coach: none, assistant: none, auditor: none },
  'visits.read': { administrator: none, director: club, coach: own, assistant: none, auditor: club },
  'visits.write': { administrator: none, director: club, coach: none, assistant: none, auditor: none },

  'coverage.read': { administrator: club, director: club, coach: own, assistant: none, auditor: club },
  'ledger.read': { administrator: club, director: club, coach: own, assistant: none, auditor: club },
  'ledger.export': { administrator: none, director: none, coach: none, assistant: none, auditor: club },
  'spot-checks.read': { administrator: club, director: club, coach: own, assistant: none, auditor: club },
  'spot-checks.draw': { administrator: none, director: none, coach: none, assistant: none, auditor: club },
} as const satisfies Record<Permission, Grants>

/**
 * By which permission a person knows that the thing exists. Whoever has it but may not act is told so (403); whoever
 * lacks it gets the answer for a missing thing (404). What a thing's own readers alone know of is seen through itself.
 */
export const seenThrough = {
  'club.read': 'club.read',
  'club.write': 'club.read',
  'club-limits.write': 'club.read',
  'people.read': 'people.read',
  'people.write': 'people.read',
  'sign-in-links.make': 'people.read',
  'seasons.read': 'seasons.read',
  'seasons.write': 'seasons.read',
  'teams.read': 'teams.read',
  'teams.write': 'teams.read',
  'team-reach.write': 'teams.read',
  'spaces.read': 'spaces.read',
  'spaces.write': 'spaces.read',
  'slots.read': 'slots.read',
  'slots.write': 'slots.read',
  'dates.read': 'dates.read',
  'dates.write': 'dates.read',
  'equipment.read': 'equipment.read',
  'equipment.write': 'equipment.read',
  'squad.read-counts': 'squad.read-counts',
  'squad.read-pseudonyms': 'squad.read-counts',
  'squad.read-names': 'squad.read-counts',
  'squad.reveal-names': 'squad.read-counts',
  'squad.write': 'squad.read-counts',
  'patterns.read-published': 'patterns.read-published',
  'patterns.read-draft': 'patterns.read-draft',
  // Writing means the draft, which coaches may not know of, even where an older state of it is published.
  'patterns.write': 'patterns.read-draft',
  'curricula.read-draft': 'curricula.read-draft',
  'curricula.write': 'curricula.read-draft',
  'curricula.publish': 'curricula.read-draft',
  'versions.read': 'versions.read',
  // A team's kit, evening and adoption exist as soon as the team does.
  'versions.adopt': 'teams.read',
  'kit.read': 'teams.read',
  'operations.write': 'teams.read',
  'evenings.read': 'evenings.read',
  'records.read': 'records.read',
  'records.confirm': 'records.read',
  'matches.read': 'matches.read',
  'matches.write': 'matches.read',
  'changes.read': 'changes.read',
  'changes.answer': 'changes.read',
  'visits.read': 'visits.read',
  'visits.write': 'visits.read',
  'coverage.read': 'coverage.read',
  'ledger.read': 'ledger.read',
  'ledger.export': 'ledger.read',
  'spot-checks.read': 'spot-checks.read',
  'spot-checks.draw': 'spot-checks.read',
} as const satisfies Record<Permission, Permission>
