import { type ClubProfiles, PROFILE_IDS, type ProfileId } from '@espalier/domain/check'
import Link from 'next/link'
import { ageProfilesMessage } from '../../messages/age-profiles'
import { pages, pageTo } from '../../paths'
import { ageWord } from './profile-words'

type AgeLinksProps = {
  readonly clubId: string
  readonly shown: ProfileId
  readonly profiles: ClubProfiles | undefined
}

/** The ages in order; those with values of the club's own say how many. */
export function AgeLinks({ clubId, shown, profiles }: AgeLinksProps) {
  return (
    <nav aria-label={ageProfilesMessage('ages')}>
      <ul className="flex flex-wrap gap-x-5 gap-y-1">
        {PROFILE_IDS.map((profileId) => {
          const count = Object.keys(profiles?.[profileId] ?? {}).length
          const age = ageWord(profileId)
          return (
            <li key={profileId}>
              <Link
                href={pageTo(pages.ageProfiles, { clubId }, { age: profileId })}
                aria-current={profileId === shown ? 'page' : undefined}
                className="inline-flex min-h-target min-w-target items-center aria-[current=page]:font-semibold aria-[current=page]:no-underline"
              >
                {count === 0 ? age : ageProfilesMessage('ageWithOwn', { age, count })}
              </Link>
            </li>
          )
        })}
      </ul>
    </nav>
  )
}
