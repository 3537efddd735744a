import type { Metadata } from 'next'
import { findMe } from '../../../api/server'
import { SignInPress } from '../../../features/sign-in/sign-in-press'
import { signInMessage } from '../../../messages/sign-in'
import { PlainPage } from '../../../shell/club-page'

// The link's secret stands behind the #, which browsers never send; the referrer is withheld all the same.
export const metadata: Metadata = { referrer: 'no-referrer' }

export default async function SignInPage() {
  const clubs = (await findMe())?.clubs ?? []
  const signedInAs = clubs.map(({ clubId, displayName, name }) => ({ clubId, name: displayName, club: name }))
  return (
    <PlainPage title={signInMessage('title')} lead={<p>{signInMessage('lead')}</p>}>
      <SignInPress signedInAs={signedInAs} />
    </PlainPage>
  )
}
