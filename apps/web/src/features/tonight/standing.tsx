import { tonightMessage } from '../../messages/tonight'
import { pages, pageTo } from '../../paths'
import { isSignedOut } from './is-signed-out'
import type { KitState } from './use-kit'
import type { Outbox } from './use-outbox'

type StandingProps = { readonly kitState: KitState; readonly outbox: Outbox; readonly isKept?: boolean | null }

/** What the club and this phone know of each other, in a few words; heard when it changes. */
export function Standing({ kitState, outbox, isKept = null }: StandingProps) {
  const failure = outbox.failure ?? kitState.failure
  return (
    <span className="flex flex-wrap items-baseline gap-x-3 text-ink-soft">
      <span role="status">{standingWords({ kitState, outbox, isKept })}</span>
      <OthersWaiting count={outbox.ofOthers} />
      {isSignedOut(failure) && (
        <a href={pageTo(pages.signIn, {})} className="inline-flex min-h-target items-center">
          {tonightMessage('signIn')}
        </a>
      )}
    </span>
  )
}

/** Writes that stay on this phone until whoever made them signs in here; nothing where there are none. */
export function OthersWaiting({ count }: { readonly count: number }) {
  if (count === 0) return null
  return <span>{count === 1 ? tonightMessage('othersOne') : tonightMessage('othersMany', { count })}</span>
}

function standingWords({ kitState, outbox, isKept }: Required<StandingProps>): string {
  if (isKept === false) return tonightMessage('notSaved')
  const waiting = outbox.waiting?.filter((each) => each.refusal === null).length ?? 0
  if (waiting > 0 && !outbox.isSending)
    return waiting === 1 ? tonightMessage('waitingOne') : tonightMessage('waitingMany', { count: waiting })
  // A club that refuses leaves no copy here to show: see forgetRefused.
  if (kitState.failure !== null) return tonightMessage('offline')
  if (isKept === true) return tonightMessage('savedHere')
  return kitState.isAsking ? tonightMessage('asking') : tonightMessage('updated')
}
