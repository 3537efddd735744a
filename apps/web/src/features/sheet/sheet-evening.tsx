import { EQUIPMENT_KINDS, EQUIPMENT_WORDS, type SessionPlan } from '@espalier/domain/session'
import { sheetMessage } from '../../messages/sheet'
import { Cautions } from '../tonight/cautions'
import { EveningLine } from '../tonight/evening-line'
import type { SheetParts } from './sheet'

/** The left column: the evening as a line, the bag, and what to see to before it starts. */
export function SheetEvening({ tonight, plan }: SheetParts) {
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
        <h2>{sheetMessage('before')}</h2>
        <Cautions kit={tonight.kit} adults={plan.adults} />
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
