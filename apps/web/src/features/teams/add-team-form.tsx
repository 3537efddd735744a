'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { Season } from '@espalier/contract/places'
import { teamsMessage } from '../../messages/teams'
import { CommandForm } from '../../shell/command-form'
import { textOf } from '../../shell/form-values'
import { SelectField } from '../../ui/select-field/select-field'
import { TextField } from '../../ui/text-field/text-field'
import { formatChoices } from './format-choices'

const AGE_GROUPS = ['U7', 'U8', 'U9', 'U10', 'U11', 'U12', 'U13', 'U14', 'U15', 'U16', 'U18', 'adult'] as const
const CATEGORIES = ['mixed', 'girls', 'boys'] as const

type AddTeamFormProps = { readonly clubId: string; readonly seasons: readonly Season[] }

export function AddTeamForm({ clubId, seasons }: AddTeamFormProps) {
  return (
    <CommandForm
      path={pathTo(paths.teams, { clubId })}
      press={teamsMessage('addTeamPress')}
      pressing={teamsMessage('adding')}
      read={(form, id) => ({
        ok: true,
        body: {
          id,
          seasonId: textOf(form, 'seasonId'),
          name: textOf(form, 'name'),
          ageGroup: textOf(form, 'ageGroup'),
          category: textOf(form, 'category'),
          formatId: textOf(form, 'formatId'),
        },
        done: teamsMessage('teamAdded', { name: textOf(form, 'name') }),
      })}
    >
      {(wrong) => (
        <>
          <TextField name="name" label={teamsMessage('teamName')} wrong={wrong('name')} required maxLength={60} />
          <SelectField
            name="seasonId"
            label={teamsMessage('season')}
            choices={seasons.map((season) => ({ value: season.seasonId, label: season.name }))}
            wrong={wrong('seasonId')}
          />
          <SelectField
            name="ageGroup"
            label={teamsMessage('ageGroup')}
            hint={teamsMessage('ageHint')}
            choices={AGE_GROUPS.map((age) => ({ value: age, label: age }))}
            defaultValue="U10"
            wrong={wrong('ageGroup')}
          />
          <SelectField
            name="category"
            label={teamsMessage('category')}
            choices={CATEGORIES.map((category) => ({ value: category, label: teamsMessage(category) }))}
            wrong={wrong('category')}
          />
          <SelectField
            name="formatId"
            label={teamsMessage('format')}
            choices={formatChoices}
            defaultValue="us-7v7"
            wrong={wrong('formatId')}
          />
        </>
      )}
    </CommandForm>
  )
}
