'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import { AGE_PROFILES, PROFILE_FIELDS, PROFILE_RANGES, type ProfileField, type ProfileId } from '@espalier/domain/check'
import type { ClubLimits } from '@espalier/domain/curriculum'
import { useState } from 'react'
import { ageProfilesMessage } from '../../messages/age-profiles'
import { CommandForm } from '../../shell/command-form'
import { textOf } from '../../shell/form-values'
import { Button } from '../../ui/button/button'
import { NumberField } from '../../ui/number-field/number-field'
import { readOwnValues } from './own-values'
import { ageWord, unitOf, valueText } from './profile-words'

type OwnValuesFormProps = {
  readonly clubId: string
  readonly profileId: ProfileId
  readonly limits: ClubLimits
  readonly version: number
}

/** One age's values of the club's own; the other ages and limits are sent as they stand. */
export function OwnValuesForm({ clubId, profileId, limits, version }: OwnValuesFormProps) {
  const nameOf = (field: ProfileField) => `limits/profiles/${profileId}/${field}`
  return (
    <CommandForm
      method="PUT"
      path={pathTo(paths.settings, { clubId })}
      press={ageProfilesMessage('press')}
      pressing={ageProfilesMessage('pressing')}
      kind="next"
      startsAnew={false}
      read={(form) => {
        const reading = readOwnValues(profileId, (field) => textOf(form, nameOf(field)))
        if (!reading.ok) {
          const wrong = Object.entries(reading.wrong).map(([field, words]) => [nameOf(field as ProfileField), words])
          return { ok: false, wrong: Object.fromEntries(wrong) }
        }
        const body = { limits: { ...limits, profiles: { ...limits.profiles, [profileId]: reading.own } } }
        const done = ageProfilesMessage('saved', { age: ageWord(profileId) })
        return { ok: true, body, fromVersion: version, done }
      }}
      whenStale={<p className="max-w-text">{ageProfilesMessage('stale')}</p>}
    >
      {(wrong) => (
        <div className="grid items-start gap-x-8 gap-y-5 desk:grid-cols-2">
          {PROFILE_FIELDS.map((field) => (
            <OwnValueField
              key={field}
              field={field}
              name={nameOf(field)}
              profileId={profileId}
              own={limits.profiles[profileId]?.[field]}
              wrong={wrong(nameOf(field))}
            />
          ))}
        </div>
      )}
    </CommandForm>
  )
}

type OwnValueFieldProps = {
  readonly field: ProfileField
  readonly name: string
  readonly profileId: ProfileId
  readonly own: number | undefined
  readonly wrong: string | undefined
}

function OwnValueField({ field, name, profileId, own, wrong }: OwnValueFieldProps) {
  const [text, setText] = useState(own === undefined ? '' : valueText(own / 1000))
  const [least, most] = PROFILE_RANGES[field]
  const what = ageProfilesMessage(field)
  return (
    <div className="flex flex-wrap items-end gap-x-3">
      <NumberField
        name={name}
        label={what}
        unit={unitOf(field)}
        hint={ageProfilesMessage('ownHint', { printed: valueText(AGE_PROFILES[profileId][field].value), least, most })}
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
        wrong={wrong}
      />
      {text !== '' && (
        <Button kind="quiet" aria-label={ageProfilesMessage('reset', { what })} onClick={() => setText('')}>
          {ageProfilesMessage('resetPress')}
        </Button>
      )}
    </div>
  )
}
