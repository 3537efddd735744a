'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { Team } from '@espalier/contract/places'
import { teamsMessage } from '../../messages/teams'
import { CommandForm } from '../../shell/command-form'
import { textOf } from '../../shell/form-values'
import { NumberField } from '../../ui/number-field/number-field'
import { numberFromText } from '../../ui/number-field/number-text'
import { TextField } from '../../ui/text-field/text-field'

const LEAST_METRES = 3
const MOST_METRES = 60

type ReachFormProps = {
  readonly clubId: string
  readonly teamId: string
  readonly reach: Team['reach']
  /** The club's own day, which nobody can have measured after. */
  readonly today: string
}

/** Two lengths and a day: what a coach writes down of the field check. */
export function ReachForm({ clubId, teamId, reach, today }: ReachFormProps) {
  return (
    <CommandForm
      method="PUT"
      path={pathTo(paths.reach, { clubId, teamId })}
      press={teamsMessage('reachPress')}
      pressing={teamsMessage('reachPressing')}
      startsAnew={false}
      labels={{ '/measuredOn': teamsMessage('reachDay') }}
      read={(form) => {
        const lengths = (['strongFootMm', 'otherFootMm'] as const).map(
          (foot) => [foot, millimetresFrom(textOf(form, foot))] as const,
        )
        const wrong = lengths
          .filter(([, length]) => length === null)
          .map(([foot]) => [foot, teamsMessage('reachWrong')])
        if (wrong.length > 0) return { ok: false, wrong: Object.fromEntries(wrong) }
        const body = { ...Object.fromEntries(lengths), measuredOn: textOf(form, 'measuredOn') }
        return { ok: true, body, fromVersion: reach?.version ?? 0, done: teamsMessage('reachSaved') }
      }}
      whenStale={<p className="max-w-text">{teamsMessage('reachStale')}</p>}
    >
      {(wrong) => (
        <>
          <NumberField
            name="strongFootMm"
            label={teamsMessage('reachStrong')}
            unit={teamsMessage('reachUnit')}
            defaultValue={metresFrom(reach?.strongFootMm)}
            wrong={wrong('strongFootMm')}
          />
          <NumberField
            name="otherFootMm"
            label={teamsMessage('reachOther')}
            unit={teamsMessage('reachUnit')}
            defaultValue={metresFrom(reach?.otherFootMm)}
            wrong={wrong('otherFootMm')}
          />
          <TextField
            name="measuredOn"
            type="date"
            label={teamsMessage('reachDay')}
            defaultValue={today}
            max={today}
            wrong={wrong('measuredOn')}
            required
          />
        </>
      )}
    </CommandForm>
  )
}

function millimetresFrom(text: string): number | null {
  const value = numberFromText(text)
  return value !== null && value >= LEAST_METRES && value <= MOST_METRES ? Math.round(value * 1000) : null
}

function metresFrom(lengthMm: number | undefined): string {
  return lengthMm === undefined ? '' : String(lengthMm / 1000)
}
