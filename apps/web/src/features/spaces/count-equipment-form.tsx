'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { EquipmentList, Team } from '@espalier/contract/places'
import { EQUIPMENT_KINDS } from '@espalier/domain/session'
import { spacesMessage } from '../../messages/spaces'
import { CommandForm } from '../../shell/command-form'
import { choiceOf, textOf } from '../../shell/form-values'
import { NumberField } from '../../ui/number-field/number-field'
import { numberFromText } from '../../ui/number-field/number-text'
import { SelectField } from '../../ui/select-field/select-field'

const MOST_PIECES = 999

type CountEquipmentFormProps = {
  readonly clubId: string
  readonly teams: readonly Pick<Team, 'teamId' | 'name'>[]
  /** What is counted already, as the page shows it: a new count replaces just this. */
  readonly owners: EquipmentList['owners']
}

export function CountEquipmentForm({ clubId, teams, owners }: CountEquipmentFormProps) {
  return (
    <CommandForm
      path={pathTo(paths.equipment, { clubId })}
      press={spacesMessage('countPress')}
      pressing={spacesMessage('saving')}
      read={(form, id) => {
        const counts = EQUIPMENT_KINDS.map((kind) => [kind, piecesFrom(textOf(form, kind))] as const)
        const wrong = counts.filter(([, count]) => count === null).map(([kind]) => [kind, spacesMessage('countWrong')])
        if (wrong.length > 0) return { ok: false, wrong: Object.fromEntries(wrong) }
        const teamId = choiceOf(form, 'teamId')
        const fromVersion = owners.find((owner) => owner.teamId === teamId)?.version ?? 0
        const body = { id, teamId, counts: Object.fromEntries(counts) }
        return { ok: true, body, fromVersion, done: spacesMessage('counted') }
      }}
      whenStale={<p className="max-w-text">{spacesMessage('countStale')}</p>}
    >
      {(wrong) => (
        <>
          <SelectField
            name="teamId"
            label={spacesMessage('owner')}
            choices={[
              { value: '', label: spacesMessage('clubStore') },
              ...teams.map(({ teamId, name }) => ({ value: teamId, label: name })),
            ]}
          />
          {EQUIPMENT_KINDS.map((kind) => (
            <NumberField
              key={kind}
              name={kind}
              label={spacesMessage(kind)}
              unit={spacesMessage('pieces')}
              defaultValue="0"
              wrong={wrong(kind)}
            />
          ))}
        </>
      )}
    </CommandForm>
  )
}

function piecesFrom(text: string): number | null {
  const value = numberFromText(text)
  return value !== null && Number.isInteger(value) && value >= 0 && value <= MOST_PIECES ? value : null
}
