import type { Metadata } from 'next'
import { SignInPress } from '../../../features/sign-in/sign-in-press'
import { signInMessage } from '../../../messages/sign-in'
import { PlainPage } from '../../../shell/club-page'

// The link's secret stands behind the #, which browsers never send; the referrer is withheld all the same.
export const metadata: Metadata = { title: signInMessage('title'), referrer: 'no-referrer' }

export default function SignInPage() {
  return (
    <PlainPage title={signInMessage('title')} lead={<p>{signInMessage('lead')}</p>}>
      <SignInPress />
    </PlainPage>
  )
}
