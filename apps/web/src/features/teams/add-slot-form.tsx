'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { Season, SpaceRow } from '@espalier/contract/places'
import { teamsMessage } from '../../messages/teams'
import { CommandForm } from '../../shell/command-form'
import { dateWords } from '../../shell/dates'
import { choiceOf, textOf } from '../../shell/form-values'
import { NumberField } from '../../ui/number-field/number-field'
import { numberFromText } from '../../ui/number-field/number-text'
import { SelectField } from '../../ui/select-field/select-field'
import { TextField } from '../../ui/text-field/text-field'
import { WEEKDAYS, weekdayName } from './weekdays'

type AddSlotFormProps = {
  readonly clubId: string
  readonly teamId: string
  readonly season: Season
  readonly spaces: readonly Pick<SpaceRow, 'spaceId' | 'space'>[]
}

export function AddSlotForm({ clubId, teamId, season, spaces }: AddSlotFormProps) {
  return (
    <CommandForm
      path={pathTo(paths.slots, { clubId, teamId })}
      press={teamsMessage('addSlotPress')}
      pressing={teamsMessage('adding')}
      read={(form, id) => {
        const minutes = numberFromText(textOf(form, 'minutes'))
        if (minutes === null || !Number.isInteger(minutes) || minutes < 20 || minutes > 180)
          return { ok: false, wrong: { minutes: teamsMessage('minutesWrong') } }
        return {
          ok: true,
          body: {
            id,
            spaceId: choiceOf(form, 'spaceId'),
            weekday: Number(textOf(form, 'weekday')),
            localStart: textOf(form, 'localStart'),
            minutes,
            validFrom: textOf(form, 'validFrom'),
            validTo: textOf(form, 'validTo'),
          },
          done: addedWords(season, textOf(form, 'validFrom'), textOf(form, 'validTo')),
        }
      }}
    >
      {(wrong) => (
        <>
          <SelectField
            name="weekday"
            label={teamsMessage('day')}
            choices={WEEKDAYS.map((weekday) => ({ value: String(weekday), label: weekdayName(weekday) }))}
            defaultValue="2"
            wrong={wrong('weekday')}
          />
          <TextField
            name="localStart"
            type="time"
            label={teamsMessage('start')}
            defaultValue="17:30"
            wrong={wrong('localStart')}
            required
          />
          <NumberField
            name="minutes"
            label={teamsMessage('minutes')}
            unit={teamsMessage('minutesUnit')}
            defaultValue="75"
            wrong={wrong('minutes')}
          />
          <SelectField
            name="spaceId"
            label={teamsMessage('space')}
            choices={[
              ...spaces.map(({ spaceId, space }) => ({ value: spaceId, label: `${space.venue}, ${space.name}` })),
              { value: '', label: teamsMessage('noSpace') },
            ]}
            wrong={wrong('spaceId')}
          />
          <TextField
            name="validFrom"
            type="date"
            label={teamsMessage('from')}
            defaultValue={season.firstDay}
            wrong={wrong('validFrom')}
            required
          />
          <TextField
            name="validTo"
            type="date"
            label={teamsMessage('until')}
            defaultValue={season.lastDay}
            wrong={wrong('validTo')}
            required
          />
        </>
      )}
    </CommandForm>
  )
}

/** Days outside the season are not refused, but they become no dates; that is said. */
export function addedWords(season: Pick<Season, 'firstDay' | 'lastDay'>, from: string, until: string): string {
  if (from >= season.firstDay && until <= season.lastDay) return teamsMessage('slotAdded')
  return teamsMessage('slotAddedInSeason', { from: dateWords(season.firstDay), until: dateWords(season.lastDay) })
}
