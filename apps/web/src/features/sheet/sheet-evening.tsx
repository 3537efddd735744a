import { EQUIPMENT_KINDS, EQUIPMENT_WORDS, type SessionPlan } from '@espalier/domain/session'
import { sheetMessage } from '../../messages/sheet'
import type { NameOf } from '../tonight/child-names'
import { EveningLine } from '../tonight/evening-line'
import type { SheetParts } from './sheet'

/** The left column: the evening as a line, the bag, and who plays with whom. */
export function SheetEvening({ tonight, plan, nameOf }: SheetParts & { readonly nameOf: NameOf }) {
  const sitsOut = plan.sitsOut.map(nameOf).join(', ')
  return (
    <div className="sheet-evening">
      <section>
        <h2>{sheetMessage('evening')}</h2>
        <EveningLine plan={plan} localStart={tonight.chosen.date.localStart} unitsAMinute={2.3} />
      </section>
      <section>
        <h2>{sheetMessage('bag')}</h2>
        <p>{bagWords(plan)}</p>
      </section>
      <section>
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
    </div>
  )
}

function bagWords(plan: SessionPlan): string {
  const needed = EQUIPMENT_KINDS.filter((kind) => plan.equipmentNeeded[kind] > 0).map((kind) => {
    const count = plan.equipmentNeeded[kind]
    return `${count} ${count === 1 ? EQUIPMENT_WORDS[kind].one : EQUIPMENT_WORDS[kind].many}`
  })
  const short = plan.notes.filter((note) => /^(equipment|bibs)-/.test(note.code)).map((note) => note.sentence)
  return [`${needed.join(', ')}.`, ...short].join(' ')
}
