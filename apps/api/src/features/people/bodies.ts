import type { Person } from '@espalier/contract/people'
import type { PersonRow } from './queries'

export function personBodyOf(row: PersonRow): Person {
  return {
    memberId: row.member_id,
    displayName: row.display_name,
    roles: row.roles,
    version: row.version,
    left: row.left,
    signIn: row.link_used ? 'has-signed-in' : row.link_waits ? 'link-waiting' : 'no-link',
  }
}
