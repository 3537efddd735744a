import type { Person } from '@espalier/contract/people'
import type { Team } from '@espalier/contract/places'
import { peopleMessage } from '../../messages/people'
import { isTicked } from '../../shell/form-values'
import { CheckLine } from '../../ui/check-line/check-line'
import { FieldSet } from '../../ui/field-set/field-set'

type Role = Person['roles'][number]
type RoleTeam = Pick<Team, 'teamId' | 'name'>

const CLUB_ROLES = ['administrator', 'director', 'auditor'] as const
const TEAM_ROLES = ['coach', 'assistant'] as const

const roleField = (role: string, teamId: string | null) => (teamId === null ? `role-${role}` : `role-${role}-${teamId}`)

const CLUB_ROLE_WORDS = {
  administrator: 'roleAdministrator',
  director: 'roleDirector',
  auditor: 'roleAuditor',
} as const satisfies Record<(typeof CLUB_ROLES)[number], string>

/** Every role someone can hold here: the club's three, and two for each team. */
export function PersonRoles({ teams, held }: { readonly teams: readonly RoleTeam[]; readonly held: readonly Role[] }) {
  const holds = (role: string, teamId: string | null) => held.some((one) => one.role === role && one.teamId === teamId)
  return (
    <FieldSet legend={peopleMessage('roles')} hint={peopleMessage('rolesHint')}>
      <div className="clear-both">
        {CLUB_ROLES.map((role) => (
          <CheckLine
            key={role}
            name={roleField(role, null)}
            label={peopleMessage(CLUB_ROLE_WORDS[role])}
            defaultChecked={holds(role, null)}
          />
        ))}
        {teams.flatMap((team) =>
          TEAM_ROLES.map((role) => (
            <CheckLine
              key={`${role} ${team.teamId}`}
              name={roleField(role, team.teamId)}
              label={peopleMessage(role === 'coach' ? 'roleCoach' : 'roleAssistant', { team: team.name })}
              defaultChecked={holds(role, team.teamId)}
            />
          )),
        )}
        {teams.length === 0 && <p className="py-2 text-small text-ink-soft">{peopleMessage('noTeams')}</p>}
      </div>
    </FieldSet>
  )
}

/** The roles that are ticked in a form that holds PersonRoles. */
export function rolesOf(form: FormData, teams: readonly RoleTeam[]): readonly Role[] {
  const clubRoles = CLUB_ROLES.filter((role) => isTicked(form, roleField(role, null)))
  const teamRoles = teams.flatMap(({ teamId }) =>
    TEAM_ROLES.filter((role) => isTicked(form, roleField(role, teamId))).map((role) => ({ role, teamId })),
  )
  return [...clubRoles.map((role) => ({ role, teamId: null })), ...teamRoles]
}
