import { GUEST_PREFIX, type Kit } from '@espalier/domain/session'
import { tonightMessage } from '../../messages/tonight'

export type NameOf = (childId: string) => string

/** What to call a child of a plan: the short name, or a guest's initials. */
export function childNames(kit: Kit): NameOf {
  const names = new Map(kit.squad.map((member) => [member.playerId, member.shortName]))
  return (childId) =>
    childId.startsWith(GUEST_PREFIX)
      ? tonightMessage('guestName', { initials: childId.slice(GUEST_PREFIX.length) })
      : (names.get(childId) ?? '–')
}
