/** What a person may be in a club; one person may be several. */
export const roles = ['administrator', 'director', 'coach', 'assistant', 'auditor'] as const

export type Role = (typeof roles)[number]

/** Whether a role belongs to one team or to the whole club. */
export const roleReach = {
  administrator: 'club',
  director: 'club',
  coach: 'team',
  assistant: 'team',
  auditor: 'club',
} as const satisfies Record<Role, 'club' | 'team'>

export type MemberRole = {
  readonly role: Role
  /** Null for a role in the whole club, and for a coach or assistant who has no team yet. */
  readonly teamId: string | null
}

/** A login seen inside one club; whoever has no membership there never becomes a Member. */
export type Member = {
  readonly memberId: string
  readonly clubId: string
  readonly roles: readonly MemberRole[]
}
