import type { Kit } from '@espalier/domain/session'
import { tonightMessage } from '../../messages/tonight'
import { classNames } from '../../ui/class-names'
import type { Evening, EveningChange } from './evening'
import { FieldSection } from './field-frame'

type WhoCameProps = {
  readonly kit: Kit
  readonly evening: Evening
  readonly change: (change: EveningChange) => void
}

/** Names on lines: one tap strikes a child out, the next brings it back. */
export function WhoCame({ kit, evening, change }: WhoCameProps) {
  const here = kit.squad.filter((member) => !evening.away.includes(member.playerId)).length
  const guests = evening.guests.length
  return (
    <FieldSection
      title={tonightMessage('whoCame')}
      figure={tonightMessage(guests === 0 ? 'ofSquad' : 'ofSquadAndGuests', { here, all: kit.squad.length, guests })}
    >
      {kit.squad.length === 0 && <p className="text-ink-soft">{tonightMessage('squadEmpty')}</p>}
      <ul className="grid grid-cols-[repeat(auto-fill,minmax(5.1rem,1fr))] gap-x-2.5 gap-y-1">
        {kit.squad.map(({ playerId, shortName }) => (
          <li key={playerId}>
            <NameLine
              name={shortName}
              state={evening.away.includes(playerId) ? 'out' : evening.sitsOut.includes(playerId) ? 'sits-out' : 'here'}
              onPress={() => change({ kind: 'come-or-not', playerId })}
            />
          </li>
        ))}
      </ul>
    </FieldSection>
  )
}

type NameLineProps = {
  readonly name: string
  readonly state: 'here' | 'out' | 'sits-out'
  readonly onPress: () => void
}

function NameLine({ name, state, onPress }: NameLineProps) {
  const isOut = state === 'out'
  return (
    <button
      type="button"
      aria-pressed={!isOut}
      onClick={onPress}
      className={classNames(
        'flex min-h-target w-full justify-between gap-x-1 border-b-2 text-left leading-tight',
        state === 'sits-out' ? 'flex-col justify-center' : 'items-center',
        isOut ? 'border-dotted border-ink-soft text-ink-soft' : 'border-ink font-semibold',
      )}
    >
      <span className={classNames('min-w-0 [overflow-wrap:anywhere]', isOut && 'line-through')}>{name}</span>
      {state === 'here' && <Tick />}
      {state === 'out' && <span className="text-small">{tonightMessage('out')}</span>}
      {state === 'sits-out' && (
        <span className="text-small leading-none font-normal">{tonightMessage('sitsOutMark')}</span>
      )}
    </button>
  )
}

function Tick() {
  return (
    <svg viewBox="0 0 14 14" aria-hidden="true" className="size-3.5 shrink-0 fill-none stroke-ink stroke-[2.2]">
      <path d="M1.5 7.5 5 12 12.5 1.5" />
    </svg>
  )
}
