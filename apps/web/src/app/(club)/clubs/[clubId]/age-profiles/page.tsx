import { paths, pathTo } from '@espalier/contract/paths'
import { club as clubShape } from '@espalier/contract/places'
import { PROFILE_IDS } from '@espalier/domain/check'
import { readFromApi, readMyClub } from '../../../../../api/server'
import { AgeLinks } from '../../../../../features/age-profiles/age-links'
import { OwnValuesForm } from '../../../../../features/age-profiles/own-values-form'
import { ProfileTable } from '../../../../../features/age-profiles/profile-table'
import { ageWord } from '../../../../../features/age-profiles/profile-words'
import { ageProfilesMessage } from '../../../../../messages/age-profiles'
import { ClubPage } from '../../../../../shell/club-page'
import { Section } from '../../../../../shell/section'

type Props = {
  readonly params: Promise<{ readonly clubId: string }>
  readonly searchParams: Promise<{ readonly age?: string | readonly string[] }>
}

export default async function AgeProfilesPage({ params, searchParams }: Props) {
  const { clubId } = await params
  const { age: asked } = await searchParams
  const [membership, { settings, version }] = await Promise.all([
    readMyClub(clubId),
    readFromApi(pathTo(paths.club, { clubId }), clubShape),
  ])
  const profileId = PROFILE_IDS.find((each) => each === asked) ?? 'U10'
  const { crossingAtRelease, penaltyMarkYards7v7, profiles } = settings
  const age = ageWord(profileId)
  return (
    <ClubPage clubId={clubId} title={ageProfilesMessage('title')} lead={ageProfilesMessage('lead')}>
      <AgeLinks clubId={clubId} shown={profileId} profiles={profiles} />
      <Section id="values" title={ageProfilesMessage('valuesOf', { age })}>
        {profileId === 'U8' && <p className="text-ink-soft">{ageProfilesMessage('younger')}</p>}
        <ProfileTable profileId={profileId} profiles={profiles} />
      </Section>
      {membership.roles.some(({ role }) => role === 'director') && (
        <Section id="own" title={ageProfilesMessage('ownTitle', { age })} kind="do">
          <p className="max-w-text text-ink-soft">{ageProfilesMessage('ownLead')}</p>
          <OwnValuesForm
            key={profileId}
            clubId={clubId}
            profileId={profileId}
            limits={{ crossingAtRelease, penaltyMarkYards7v7, profiles: profiles ?? {} }}
            version={version}
          />
        </Section>
      )}
    </ClubPage>
  )
}
