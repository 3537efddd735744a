import type { Kit } from '@espalier/domain/session'
import { useState } from 'react'
import { tonightMessage } from '../../messages/tonight'
import { Button } from '../../ui/button/button'
import { CheckLine } from '../../ui/check-line/check-line'
import { TextField } from '../../ui/text-field/text-field'
import { type Evening, type EveningChange, GUESTS_MOST } from './evening'

type SitsOutProps = {
  readonly kit: Kit
  readonly evening: Evening
  readonly change: (change: EveningChange) => void
}

/** The rarer facts of a turnout, folded into one line that says how they stand. */
export function SitsOutAndGuests({ kit, evening, change }: SitsOutProps) {
  const here = kit.squad.filter((member) => !evening.away.includes(member.playerId))
  const sitting = here.filter((member) => evening.sitsOut.includes(member.playerId))
  return (
    <details>
      <summary className="flex min-h-target cursor-pointer items-center">
        <span className="dotted-line">
          {tonightMessage('more', { sits: sitsWords(sitting), guests: guestWords(evening.guests.length) })}
        </span>
      </summary>
      <div className="flex flex-col gap-4 pb-2">
        {here.length > 0 && (
          <fieldset>
            <legend className="font-semibold">{tonightMessage('sitsOutLegend')}</legend>
            <div className="grid grid-cols-2 gap-x-4">
              {here.map(({ playerId, shortName }) => (
                <CheckLine
                  key={playerId}
                  name={`sits-out/${playerId}`}
                  label={shortName}
                  checked={evening.sitsOut.includes(playerId)}
                  onChange={() => change({ kind: 'sits-out', playerId })}
                />
              ))}
            </div>
          </fieldset>
        )}
        <Guests guests={evening.guests} change={change} />
      </div>
    </details>
  )
}

function Guests({ guests, change }: { readonly guests: readonly string[]; readonly change: SitsOutProps['change'] }) {
  const [initials, setInitials] = useState('')
  const isFull = guests.length >= GUESTS_MOST
  function add() {
    if (isFull) return
    change({ kind: 'add-guest', initials })
    setInitials('')
  }
  return (
    <fieldset className="flex flex-col gap-2">
      <legend className="font-semibold">{tonightMessage('guestsLegend')}</legend>
      <p className="text-small text-ink-soft">{tonightMessage('guestsHint')}</p>
      {guests.length > 0 && (
        <ul className="flex flex-wrap gap-2">
          {guests.map((guest, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two guests may have equal initials, and their order stands
            <li key={`${guest} ${index}`}>
              <Button
                aria-label={tonightMessage('removeGuest', { initials: guest })}
                onClick={() => change({ kind: 'remove-guest', at: index })}
              >
                {guest} <span aria-hidden="true">×</span>
              </Button>
            </li>
          ))}
        </ul>
      )}
      <form
        className="flex items-end gap-3"
        onSubmit={(event) => {
          event.preventDefault()
          add()
        }}
      >
        <TextField
          name="guest"
          label={tonightMessage('guestInitials')}
          value={initials}
          maxLength={8}
          autoComplete="off"
          autoCapitalize="characters"
          onChange={(event) => setInitials(event.target.value)}
        />
        <Button type="submit" offBecause={isFull ? tonightMessage('guestsMost') : null}>
          {tonightMessage('addGuest')}
        </Button>
      </form>
    </fieldset>
  )
}

function sitsWords(sitting: readonly { readonly shortName: string }[]): string {
  const [first] = sitting
  if (first === undefined) return tonightMessage('nobodySitsOut')
  return sitting.length === 1
    ? tonightMessage('oneSitsOut', { name: first.shortName })
    : tonightMessage('manySitOut', { count: sitting.length })
}

function guestWords(count: number): string {
  if (count === 0) return tonightMessage('noGuest')
  return count === 1 ? tonightMessage('oneGuest') : tonightMessage('manyGuests', { count })
}
