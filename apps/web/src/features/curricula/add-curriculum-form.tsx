'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import { FORMAT_IDS, formats } from '@espalier/domain/formats'
import { useRouter } from 'next/navigation'
import { useRef } from 'react'
import { curriculaMessage } from '../../messages/curricula'
import { pages, pageTo } from '../../paths'
import { CommandForm, type FormReading } from '../../shell/command-form'
import { textOf } from '../../shell/form-values'
import { SelectField } from '../../ui/select-field/select-field'
import { TextField } from '../../ui/text-field/text-field'
import { AGE_GROUPS } from '../writing/age-groups'

/** A curriculum begins with a name, an age group and a game; everything else is written in its draft. */
export function AddCurriculumForm({ clubId }: { readonly clubId: string }) {
  const router = useRouter()
  const made = useRef<string | null>(null)
  return (
    <CommandForm
      path={pathTo(paths.curricula, { clubId })}
      press={curriculaMessage('begin')}
      pressing={curriculaMessage('beginning')}
      read={(form, id) => {
        made.current = id
        return readCurriculum(form, id)
      }}
      onDone={() => {
        if (made.current !== null) router.push(pageTo(pages.draft, { clubId, curriculumId: made.current }))
      }}
    >
      {(wrong) => (
        <>
          <TextField
            name="document/name"
            label={curriculaMessage('name')}
            wrong={wrong('document/name')}
            required
            maxLength={80}
            autoComplete="off"
          />
          <SelectField
            name="document/ageGroup"
            label={curriculaMessage('ageGroup')}
            choices={AGE_GROUPS.map((value) => ({ value, label: value }))}
            defaultValue="U10"
            wrong={wrong('document/ageGroup')}
          />
          <SelectField
            name="document/formatId"
            label={curriculaMessage('format')}
            choices={FORMAT_IDS.map((value) => ({ value, label: formats[value].name }))}
            defaultValue="us-7v7"
            wrong={wrong('document/formatId')}
          />
        </>
      )}
    </CommandForm>
  )
}

/** What the form says, as a body with an empty draft. */
export function readCurriculum(form: FormData, id: string): FormReading {
  const name = textOf(form, 'document/name')
  if (name === '') return { ok: false, wrong: { 'document/name': curriculaMessage('nameMissing') } }
  const document = {
    v: 1,
    name,
    ageGroup: textOf(form, 'document/ageGroup'),
    formatId: textOf(form, 'document/formatId'),
    progressions: [],
    modelSessions: [],
  }
  return { ok: true, body: { id, document }, done: curriculaMessage('begun', { name }) }
}
