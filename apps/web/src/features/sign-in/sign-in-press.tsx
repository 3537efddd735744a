'use client'

import { paths } from '@espalier/contract/paths'
import { signInResult } from '@espalier/contract/sign-in'
import { useSyncExternalStore } from 'react'
import { useCommand } from '../../api/use-command'
import { signInMessage } from '../../messages/sign-in'
import { forgetNames } from '../../offline/forget-names'
import { pages } from '../../paths'
import { FailureNotice } from '../../shell/failure-notice'
import { Button } from '../../ui/button/button'
import { Status } from '../../ui/status/status'
import { AlreadySignedIn, type SignedInAs } from './already-signed-in'
import { signInLinkFrom } from './sign-in-link'

/**
 * Only the press uses a link up: mail programs and previews open addresses by themselves, and must not sign anybody in.
 */
export function SignInPress({ signedInAs }: { readonly signedInAs: readonly SignedInAs[] }) {
  const fragment = useSyncExternalStore(listenToFragment, readFragment, () => null)
  const { state, failure, sendFor } = useCommand()
  const link = fragment === null ? null : signInLinkFrom(fragment)

  if (fragment === null) return <Status>{signInMessage('reading')}</Status>
  if (link === null) return <NoLink />

  async function signIn() {
    if (link === null || state === 'sending') return
    const outcome = await sendFor({ method: 'POST', path: paths.logins, body: link }, signInResult)
    if (!outcome.ok) return
    // Names that somebody else left here are not for whoever comes now; their own come back with the first look.
    await forgetNames()
    // Replacing the entry keeps the used link out of the browser's history.
    window.location.replace(pages.home)
  }

  const usedUp = failure?.kind === 'problem' && failure.problem.code === 'link-not-valid'
  return (
    <div className="flex max-w-text flex-col gap-6">
      <section aria-labelledby="what-happens" className="border-t border-wire pt-3">
        <h2 id="what-happens" className="font-semibold">
          {signInMessage('whatHappens')}
        </h2>
        <ul className="mt-1 flex list-disc flex-col gap-1 pl-5">
          <li>{signInMessage('onceOnly')}</li>
          <li>{signInMessage('staysIn')}</li>
          <li>{signInMessage('sharedDevice')}</li>
        </ul>
      </section>
      {state === 'done' ? null : <AlreadySignedIn signedInAs={signedInAs} />}
      <FailureNotice failure={failure} />
      {usedUp ? (
        <p>{signInMessage('askAgain')}</p>
      ) : (
        <Button kind="next" className="desk:self-start" onClick={signIn} aria-busy={state === 'sending'}>
          {state === 'sending' ? signInMessage('pressing') : signInMessage('press')}
        </Button>
      )}
      <Status>{state === 'done' ? signInMessage('done') : null}</Status>
    </div>
  )
}

function NoLink() {
  return (
    <div className="flex max-w-text flex-col gap-1 border-t border-dotted border-ink-soft pt-3">
      <p className="font-semibold">{signInMessage('noLink')}</p>
      <p>{signInMessage('noLinkLead')}</p>
    </div>
  )
}

function readFragment(): string {
  return window.location.hash
}

function listenToFragment(listen: () => void): () => void {
  window.addEventListener('hashchange', listen)
  return () => window.removeEventListener('hashchange', listen)
}
