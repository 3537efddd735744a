import type { Person } from '@espalier/contract/people'
import type { PersonRow } from './queries'

/** Who waits for a link is for those who make links: to anyone else it would only say whom to trick. */
export function personBodyOf(row: PersonRow, mayMakeLinks: boolean): Person {
  return {
    memberId: row.member_id,
    displayName: row.display_name,
    roles: row.roles,
    version: row.version,
    left: row.left,
    signIn: mayMakeLinks ? signInOf(row) : null,
  }
}

function signInOf(row: PersonRow): NonNullable<Person['signIn']> {
  if (row.link_used) return 'has-signed-in'
  return row.link_waits ? 'link-waiting' : 'no-link'
}
