'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import { teamsMessage } from '../../messages/teams'
import { CommandForm } from '../../shell/command-form'
import { textOf } from '../../shell/form-values'
import { TextField } from '../../ui/text-field/text-field'

export function AddSeasonForm({ clubId }: { readonly clubId: string }) {
  return (
    <CommandForm
      path={pathTo(paths.seasons, { clubId })}
      press={teamsMessage('addSeasonPress')}
      pressing={teamsMessage('adding')}
      read={(form, id) => ({
        ok: true,
        body: {
          id,
          name: textOf(form, 'name'),
          firstDay: textOf(form, 'firstDay'),
          lastDay: textOf(form, 'lastDay'),
        },
        done: teamsMessage('seasonAdded', { name: textOf(form, 'name') }),
      })}
    >
      {(wrong) => (
        <>
          <TextField name="name" label={teamsMessage('seasonName')} wrong={wrong('name')} required maxLength={60} />
          <TextField name="firstDay" type="date" label={teamsMessage('firstDay')} wrong={wrong('firstDay')} required />
          <TextField name="lastDay" type="date" label={teamsMessage('lastDay')} wrong={wrong('lastDay')} required />
        </>
      )}
    </CommandForm>
  )
}
