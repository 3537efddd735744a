import type { SessionPlan } from '@espalier/domain/session'
import { sheetMessage } from '../../messages/sheet'
import type { NameOf } from '../tonight/child-names'

/** Who plays with whom in each activity, with its rules. */
export function SheetGroups({ plan, nameOf }: { readonly plan: SessionPlan; readonly nameOf: NameOf }) {
  const sitsOut = plan.sitsOut.map(nameOf).join(', ')
  return (
    <section className="sheet-groups">
      <h2>{sheetMessage('groups')}</h2>
      {plan.activities.map((activity) => {
        const groups = activity.groups.filter((group) => group.role !== 'pattern' && group.children.length > 0)
        if (groups.length === 0) return null
        return (
          <p key={activity.activityId}>
            <strong>{activity.title}.</strong>{' '}
            {groups.map((group) => (
              <span key={`${group.area} ${group.name}`}>
                {group.name}: {group.children.map(nameOf).join(', ')}.{' '}
              </span>
            ))}
            {activity.conditions.length > 0 && <em className="voice-club">{activity.conditions.join('. ')}.</em>}
          </p>
        )
      })}
      {sitsOut !== '' && <p>{sheetMessage('sitsOut', { names: sitsOut })}</p>}
    </section>
  )
}
