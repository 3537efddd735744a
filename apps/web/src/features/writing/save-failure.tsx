import type { Failure } from '../../api/browser'
import { writingMessage } from '../../messages/writing'
import { FailureNotice } from '../../shell/failure-notice'

type SaveFailureProps = {
  readonly failure: Failure | null
  /** Both versions stand side by side already, which says more than a notice. */
  readonly isShownAsClash: boolean
}

/** Why a save came to nothing; of a clash whose other side could not be read, what to do. */
export function SaveFailure({ failure, isShownAsClash }: SaveFailureProps) {
  if (failure === null || isShownAsClash) return null
  const isClash = failure.kind === 'problem' && failure.problem.code === 'version-is-stale'
  return (
    <>
      <FailureNotice failure={failure} />
      {isClash && <p className="max-w-text text-small">{writingMessage('staleUnread')}</p>}
    </>
  )
}
