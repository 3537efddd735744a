import type { PlannedActivity } from '@espalier/domain/session'
import { tonightMessage } from '../../messages/tonight'
import type { NameOf } from './child-names'

/** Who plays with whom; nothing for the pattern, whose line-ups say it better. */
export function Groups({ activity, nameOf }: { readonly activity: PlannedActivity; readonly nameOf: NameOf }) {
  const groups = activity.groups.filter((group) => group.role !== 'pattern' && group.children.length > 0)
  if (groups.length === 0) return null
  return (
    <ul className="flex flex-col gap-1">
      {groups.map((group) => (
        <li key={`${group.area} ${group.name}`} className="leading-snug">
          <strong>{tonightMessage('groupOf', { name: group.name })}</strong> {group.children.map(nameOf).join(', ')}
        </li>
      ))}
    </ul>
  )
}
