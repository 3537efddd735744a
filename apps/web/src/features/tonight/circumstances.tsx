import type { Kit } from '@espalier/domain/session'
import { tonightMessage } from '../../messages/tonight'
import { PartSelect } from '../../ui/part/part'
import type { Evening, EveningChange } from './evening'
import { PACE_CHOICES_MM } from './evening-facts'
import { metresText } from './metres-text'

type CircumstancesProps = {
  readonly kit: Kit
  readonly evening: Evening
  readonly change: (change: EveningChange) => void
  readonly paceMm: number
  readonly choosePace: (paceMm: number) => void
}

/** A whole line is the target; its words stand on the dotted line, as on a form. */
const BLANK = 'min-h-target pt-4 pb-0 text-ink'

/** Where, with whom, and by whose paces: a sentence with blanks. */
export function Circumstances({ kit, evening, change, paceMm, choosePace }: CircumstancesProps) {
  const spaces = kit.spaces.map(({ spaceId, space }) => ({
    value: spaceId,
    label: tonightMessage('spaceChoice', {
      name: space.name,
      width: metresText(space.widthMm, 0),
      length: metresText(space.lengthMm, 0),
    }),
  }))
  return (
    <p className="flex flex-wrap items-baseline gap-x-4 text-ink-soft">
      {spaces.length > 0 && (
        <PartSelect
          label={tonightMessage('where')}
          className={`${BLANK} max-w-full`}
          choices={spaces}
          value={evening.spaceId ?? spaces[0]?.value}
          onChange={(event) => change({ kind: 'space', spaceId: event.target.value })}
        />
      )}
      <PartSelect
        label={tonightMessage('adults')}
        className={BLANK}
        choices={[
          { value: '1', label: tonightMessage('alone') },
          { value: '2', label: tonightMessage('withOne') },
        ]}
        value={String(evening.adults)}
        onChange={(event) => change({ kind: 'adults', adults: Number(event.target.value) })}
      />
      <PaceSelect paceMm={paceMm} choosePace={choosePace} />
    </p>
  )
}

export function PaceSelect({ paceMm, choosePace }: Pick<CircumstancesProps, 'paceMm' | 'choosePace'>) {
  return (
    <span className="inline-flex items-baseline gap-1.5">
      <span aria-hidden="true">{tonightMessage('pace').toLowerCase()}</span>
      <PartSelect
        label={tonightMessage('pace')}
        className={BLANK}
        choices={PACE_CHOICES_MM.map((choice) => ({
          value: String(choice),
          label: tonightMessage('paceChoice', { centimetres: choice / 10 }),
        }))}
        value={String(paceMm)}
        onChange={(event) => choosePace(Number(event.target.value))}
      />
    </span>
  )
}
