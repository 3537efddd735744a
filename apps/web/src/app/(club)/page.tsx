import type { Me } from '@espalier/contract/sign-in'
import Link from 'next/link'
import { findMe } from '../../api/server'
import { shellMessage } from '../../messages/shell'
import { Account, PlainPage } from '../../shell/club-page'
import { roleWords } from '../../shell/role-words'
import { clubWays, teamWays } from '../../shell/ways'
import { ButtonLink } from '../../ui/button/button-link'
import { EmptyState } from '../../ui/empty-state/empty-state'

type MyClub = Me['clubs'][number]

export default async function HomePage() {
  const myself = await findMe()
  if (myself === null) {
    return (
      <PlainPage title={shellMessage('signedOutTitle')}>
        <p className="max-w-text">{shellMessage('signedOutLead')}</p>
      </PlainPage>
    )
  }
  const [first] = myself.clubs
  return (
    <PlainPage title={shellMessage('homeTitle')} account={<Account name={first?.displayName ?? ''} />}>
      {myself.clubs.length === 0 && <EmptyState>{shellMessage('noClub')}</EmptyState>}
      {myself.clubs.map((club, index) => (
        <ClubWays key={club.clubId} club={club} first={index === 0} />
      ))}
    </PlainPage>
  )
}

function ClubWays({ club, first }: { readonly club: MyClub; readonly first: boolean }) {
  return (
    <section aria-labelledby={club.clubId} className="flex flex-col gap-4 border-t border-wire pt-4">
      <div>
        <h2 id={club.clubId} className="voice-club text-lead leading-tight font-[560]">
          {club.name}
        </h2>
        <p className="text-small text-ink-soft">
          {shellMessage('youAre', { name: club.displayName, roles: club.roles.map(roleWords).join(', ') })}
          {club.demo && ` ${shellMessage('demo')}.`}
        </p>
      </div>
      <TeamWays club={club} first={first} />
      <dl>
        {clubWays(club).map((way) => (
          <div
            key={way.href}
            className="border-t border-wire py-1 desk:grid desk:grid-cols-[14rem_1fr] desk:items-baseline desk:gap-6"
          >
            <dt>
              <Link href={way.href} className="inline-flex min-h-target items-center font-semibold">
                {way.title}
              </Link>
            </dt>
            <dd className="text-small text-ink-soft max-desk:-mt-2 max-desk:pb-2">{way.about}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

/** What a coach came for: tonight. The first one is the press to make next. */
function TeamWays({ club, first }: { readonly club: MyClub; readonly first: boolean }) {
  const teams = teamWays(club)
  if (teams.length === 0) return null
  return (
    <ul className="flex flex-col gap-3">
      {teams.map(({ tonight, squad, reach }, index) => (
        <li key={tonight.href} className="flex flex-wrap items-center gap-x-6 gap-y-1">
          <ButtonLink href={tonight.href} kind={first && index === 0 ? 'next' : 'plain'} className="max-desk:w-full">
            {tonight.title}
          </ButtonLink>
          <Link href={squad.href} className="inline-flex min-h-target items-center text-small">
            {squad.title}
          </Link>
          <Link href={reach.href} className="inline-flex min-h-target items-center text-small">
            {reach.title}
          </Link>
        </li>
      ))}
    </ul>
  )
}
