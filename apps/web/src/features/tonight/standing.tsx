import type { Failure } from '../../api/browser'
import { tonightMessage } from '../../messages/tonight'
import { pages, pageTo } from '../../paths'
import type { KitState } from './use-kit'
import type { Outbox } from './use-outbox'

type StandingProps = { readonly kitState: KitState; readonly outbox: Outbox; readonly isKept?: boolean | null }

/** What the club and this phone know of each other, in a few words; heard when it changes. */
export function Standing({ kitState, outbox, isKept = null }: StandingProps) {
  const failure = outbox.failure ?? kitState.failure
  return (
    <span className="flex flex-wrap items-baseline gap-x-3 text-ink-soft">
      <span role="status">{standingWords({ kitState, outbox, isKept })}</span>
      {outbox.ofOthers > 0 && (
        <span>
          {outbox.ofOthers === 1
            ? tonightMessage('othersOne')
            : tonightMessage('othersMany', { count: outbox.ofOthers })}
        </span>
      )}
      {isSignedOut(failure) && (
        <a href={pageTo(pages.signIn, {})} className="inline-flex min-h-target items-center">
          {tonightMessage('signIn')}
        </a>
      )}
    </span>
  )
}

function standingWords({ kitState, outbox, isKept }: Required<StandingProps>): string {
  if (isKept === false) return tonightMessage('notSaved')
  const waiting = outbox.waiting?.filter((each) => each.refusal === null).length ?? 0
  if (waiting > 0 && !outbox.isSending)
    return waiting === 1 ? tonightMessage('waitingOne') : tonightMessage('waitingMany', { count: waiting })
  if (kitState.failure !== null) return failureWords(kitState.failure)
  if (isKept === true) return tonightMessage('savedHere')
  return kitState.isAsking ? tonightMessage('asking') : tonightMessage('updated')
}

function failureWords(failure: Failure): string {
  if (isSignedOut(failure)) return tonightMessage('signedOut')
  if (failure.kind === 'problem' && failure.problem.code === 'not-found') return tonightMessage('hidden')
  return tonightMessage('offline')
}

export function isSignedOut(failure: Failure | null): boolean {
  return failure?.kind === 'problem' && failure.problem.code === 'not-signed-in'
}
