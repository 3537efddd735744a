import {
  AGE_PROFILES,
  type ClubProfiles,
  clubProfileFor,
  PROFILE_FIELDS,
  type ProfileField,
  type ProfileId,
} from '@espalier/domain/check'
import type { Sourced } from '@espalier/domain/quantities'
import { ageProfilesMessage } from '../../messages/age-profiles'
import { Origin } from '../../ui/origin/origin'
import { type Column, Table } from '../../ui/table/table'
import { originWord } from '../pattern-page/margin-notes'
import { ageWord, unitOf, valueText } from './profile-words'

type ProfileTableProps = { readonly profileId: ProfileId; readonly profiles: ClubProfiles | undefined }

/** Every value of an age with its source: the printed one, and the club's own where it has set one. */
export function ProfileTable({ profileId, profiles }: ProfileTableProps) {
  const printed = AGE_PROFILES[profileId]
  const used = clubProfileFor(profileId, profiles)
  const columns: readonly Column<ProfileField>[] = [
    { title: ageProfilesMessage('what'), namesRow: true, cell: (field) => ageProfilesMessage(field) },
    { title: ageProfilesMessage('printed'), cell: (field) => <Value field={field} sourced={printed[field]} /> },
    {
      title: ageProfilesMessage('checkedWith'),
      cell: (field) =>
        used[field].kind === 'club' ? (
          <Value field={field} sourced={used[field]} />
        ) : (
          <span className="text-ink-soft">{ageProfilesMessage('asPrinted')}</span>
        ),
    },
  ]
  return (
    <Table
      caption={ageProfilesMessage('caption', { age: ageWord(profileId) })}
      captionHidden
      columns={columns}
      rows={PROFILE_FIELDS}
      rowKey={(field) => field}
    />
  )
}

function Value({ field, sourced }: { readonly field: ProfileField; readonly sourced: Sourced<number> }) {
  return (
    <>
      <span className="tabular-nums">
        {ageProfilesMessage('value', { value: valueText(sourced.value), unit: unitOf(field) })}
      </span>{' '}
      <Origin word={originWord(sourced.kind)}>{sourced.source}</Origin>
    </>
  )
}
