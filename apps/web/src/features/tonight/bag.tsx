import { EQUIPMENT_KINDS, type Equipment, type EquipmentKind, type SessionPlan } from '@espalier/domain/session'
import { SAMPLE_SIZES } from '../../drawing/mark-sizes'
import { BallMark, BibMark, ConeMark, PoleMark, SmallGoalMark } from '../../drawing/marks'
import { tonightMessage } from '../../messages/tonight'
import { FieldSection } from './field-frame'

const SHORTAGE_CODES = ['equipment-instead', 'equipment-short', 'bibs-short'] as const

/** What must be in the bag, with what is short and what stands in for it. */
export function Bag({ plan, equipment }: { readonly plan: SessionPlan; readonly equipment: Equipment }) {
  const kinds = EQUIPMENT_KINDS.filter((kind) => plan.equipmentNeeded[kind] > 0)
  if (kinds.length === 0) return null
  const shortages = plan.notes.filter((note) => SHORTAGE_CODES.some((code) => code === note.code))
  return (
    <FieldSection
      title={tonightMessage('bag')}
      figure={shortages.length === 0 ? tonightMessage('bagEnough') : undefined}
    >
      <ul className="flex flex-wrap gap-x-6 gap-y-2">
        {kinds.map((kind) => (
          <li key={kind} className="flex flex-col">
            <span className="inline-flex items-center gap-1.5 text-script leading-tight font-bold">
              {countWords(plan, equipment, kind)}
              <Sample kind={kind} />
            </span>
            <span className="text-small text-ink-soft">{tonightMessage(kind)}</span>
          </li>
        ))}
      </ul>
      {shortages.length > 0 && (
        <p className="bg-here px-2 py-1 font-semibold">{shortages.map((note) => note.sentence).join(' ')}</p>
      )}
    </FieldSection>
  )
}

function countWords(plan: SessionPlan, equipment: Equipment, kind: EquipmentKind): string {
  const needed = plan.equipmentNeeded[kind]
  return plan.equipmentShort[kind] > 0
    ? tonightMessage('haveOfNeeded', { have: Math.min(equipment[kind], needed), needed })
    : String(needed)
}

const AT = { x: 0, y: 0 }
const SIZES = SAMPLE_SIZES

const SAMPLES = {
  cone: <ConeMark at={AT} sizes={SIZES} />,
  pole: <PoleMark at={AT} sizes={SIZES} />,
  'small-goal': <SmallGoalMark at={{ x: 0, y: 0.5 }} width={2} mouth="down" />,
  ball: <BallMark at={AT} sizes={SIZES} />,
  bib: <BibMark at={AT} sizes={SIZES} />,
} as const

function Sample({ kind }: { readonly kind: EquipmentKind }) {
  return (
    <span aria-hidden="true" className="block w-6">
      <svg viewBox="-1.3 -1.3 2.6 2.6" className="drawing overflow-visible">
        <title>{tonightMessage(kind)}</title>
        {SAMPLES[kind]}
      </svg>
    </span>
  )
}
