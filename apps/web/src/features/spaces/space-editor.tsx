'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import { MARKINGS, nominalSpace, type Space } from '@espalier/domain/pitch'
import { useState } from 'react'
import { spacesMessage } from '../../messages/spaces'
import { CommandForm } from '../../shell/command-form'
import { CheckLine } from '../../ui/check-line/check-line'
import { FieldSet } from '../../ui/field-set/field-set'
import { NumberField } from '../../ui/number-field/number-field'
import { SelectField } from '../../ui/select-field/select-field'
import { TextField } from '../../ui/text-field/text-field'
import { formatChoices } from '../teams/format-choices'
import { formOfSpace, newSpaceForm, type SpaceField, type SpaceForm, spaceOfForm, withKind } from './space-form'
import { SpacePicture } from './space-picture'

const KINDS = ['whole', 'half', 'plain'] as const
const FINDINGS = ['painted', 'flags', 'none'] as const

type SpaceEditorProps = {
  readonly clubId: string
  /** What is changed; without it a new space is made. */
  readonly kept?: { readonly spaceId: string; readonly version: number; readonly space: Space }
}

/** Measuring a space: what is typed is drawn at once, with what is worth knowing about it. */
export function SpaceEditor({ clubId, kept }: SpaceEditorProps) {
  const [form, setForm] = useState<SpaceForm>(kept === undefined ? newSpaceForm('us-7v7') : formOfSpace(kept.space))
  const reading = spaceOfForm(form)
  const change = (part: Partial<SpaceForm>) => setForm((before) => ({ ...before, ...part }))
  const target =
    kept === undefined
      ? ({ method: 'POST', path: pathTo(paths.spaces, { clubId }) } as const)
      : ({
          method: 'PUT',
          path: pathTo(paths.space, { clubId, spaceId: kept.spaceId }),
          fromVersion: kept.version,
        } as const)
  return (
    <div className="grid gap-8 desk:grid-cols-2">
      <CommandForm
        {...target}
        kind="next"
        press={spacesMessage(kept === undefined ? 'addPress' : 'save')}
        pressing={spacesMessage('saving')}
        startsAnew={false}
        onDone={() => kept === undefined && setForm(newSpaceForm(form.formatId))}
        read={(_, id) => {
          if (!reading.ok) return { ok: false, wrong: wrongWords(reading.wrong) }
          const { space } = reading
          return kept === undefined
            ? { ok: true, body: { id, space }, done: spacesMessage('added', { name: space.name }) }
            : { ok: true, body: { space }, done: spacesMessage('saved') }
        }}
      >
        {(wrong) => (
          <>
            <Names form={form} change={change} wrong={wrong} />
            <Kind form={form} set={setForm} />
            <Sides form={form} change={change} wrong={wrong} />
            <Ground form={form} change={change} />
            <Goals form={form} change={change} wrong={wrong} />
          </>
        )}
      </CommandForm>
      <SpacePicture space={reading.ok ? reading.space : (kept?.space ?? nominalSpace(form.formatId))} />
    </div>
  )
}

function wrongWords(fields: readonly SpaceField[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    fields.map((field) => [field, spacesMessage(field === 'length' || field === 'width' ? 'sizeWrong' : 'goalWrong')]),
  )
}

type PartProps = {
  readonly form: SpaceForm
  readonly change: (part: Partial<SpaceForm>) => void
  readonly wrong: (field: string) => string | undefined
}

function Names({ form, change, wrong }: PartProps) {
  return (
    <>
      <TextField
        name="venue"
        label={spacesMessage('venue')}
        value={form.venue}
        onChange={(event) => change({ venue: event.target.value })}
        wrong={wrong('space/venue')}
        required
        maxLength={60}
      />
      <TextField
        name="name"
        label={spacesMessage('name')}
        hint={spacesMessage('nameHint')}
        value={form.name}
        onChange={(event) => change({ name: event.target.value })}
        wrong={wrong('space/name')}
        required
        maxLength={60}
      />
    </>
  )
}

type KindProps = { readonly form: SpaceForm; readonly set: (next: SpaceForm) => void }

function Kind({ form, set }: KindProps) {
  return (
    <>
      <SelectField
        name="covers"
        label={spacesMessage('covers')}
        choices={KINDS.map((kind) => ({ value: kind, label: spacesMessage(kind) }))}
        value={form.covers}
        onChange={(event) => set(withKind(form, event.target.value as SpaceForm['covers'], form.formatId))}
      />
      <SelectField
        name="formatId"
        label={spacesMessage('format')}
        choices={formatChoices}
        value={form.formatId}
        onChange={(event) => set(withKind(form, form.covers, event.target.value as SpaceForm['formatId']))}
      />
    </>
  )
}

function Sides({ form, change, wrong }: PartProps) {
  return (
    <>
      <NumberField
        name="length"
        label={spacesMessage('length')}
        unit={spacesMessage('unitMetres')}
        value={form.length}
        onChange={(event) => change({ length: event.target.value })}
        wrong={wrong('length')}
      />
      <NumberField
        name="width"
        label={spacesMessage('width')}
        unit={spacesMessage('unitMetres')}
        value={form.width}
        onChange={(event) => change({ width: event.target.value })}
        wrong={wrong('width')}
      />
    </>
  )
}

function Ground({ form, change }: Omit<PartProps, 'wrong'>) {
  return (
    <FieldSet legend={spacesMessage('markings')} hint={spacesMessage('markingsHint')}>
      <div className="clear-both grid gap-4 desk:grid-cols-2">
        {MARKINGS.map((marking) => (
          <SelectField
            key={marking}
            name={`marking-${marking}`}
            label={spacesMessage(marking)}
            choices={FINDINGS.map((finding) => ({ value: finding, label: spacesMessage(finding) }))}
            value={form.markings[marking]}
            onChange={(event) =>
              change({ markings: { ...form.markings, [marking]: event.target.value as (typeof FINDINGS)[number] } })
            }
          />
        ))}
      </div>
    </FieldSet>
  )
}

function Goals({ form, change, wrong }: PartProps) {
  return (
    <FieldSet legend={spacesMessage('goals')}>
      <NumberField
        name="ownGoal"
        label={spacesMessage('ownGoal')}
        unit={spacesMessage('unitMetres')}
        hint={spacesMessage('noGoal')}
        value={form.ownGoal}
        onChange={(event) => change({ ownGoal: event.target.value })}
        wrong={wrong('ownGoal')}
      />
      <NumberField
        name="farGoal"
        label={spacesMessage('farGoal')}
        unit={spacesMessage('unitMetres')}
        hint={spacesMessage('noGoal')}
        value={form.farGoal}
        onChange={(event) => change({ farGoal: event.target.value })}
        wrong={wrong('farGoal')}
      />
      <CheckLine
        name="movable"
        label={spacesMessage('movable')}
        hint={spacesMessage('movableHint')}
        checked={form.movable}
        onChange={(event) => change({ movable: event.target.checked })}
      />
    </FieldSet>
  )
}
