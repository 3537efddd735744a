import type { Me } from '@espalier/contract/sign-in'
import { unreachable } from '@espalier/domain/quantities'
import { shellMessage } from '../messages/shell'

type HeldRole = Me['clubs'][number]['roles'][number]

/** A role as people say it: "coach of U10 Larks". */
export function roleWords({ role, teamName }: HeldRole): string {
  switch (role) {
    case 'administrator':
      return shellMessage('roleAdministrator')
    case 'director':
      return shellMessage('roleDirector')
    case 'auditor':
      return shellMessage('roleAuditor')
    case 'coach':
      return teamName === null ? shellMessage('roleCoachAnywhere') : shellMessage('roleCoach', { team: teamName })
    case 'assistant':
      return teamName === null
        ? shellMessage('roleAssistantAnywhere')
        : shellMessage('roleAssistant', { team: teamName })
    default:
      return unreachable(role)
  }
}
