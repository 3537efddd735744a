import type { Failure } from '../api/browser'
import { shellMessage } from '../messages/shell'
import { ProblemNotice } from '../ui/problem-notice/problem-notice'

type FailureNoticeProps = {
  readonly failure: Failure | null
  /** Words for the controls that a problem's pointers speak of: {"/displayName": "Name"}. */
  readonly labels?: Readonly<Record<string, string>>
}

/** Why a command came to nothing; nothing at all while there is no failure. */
export function FailureNotice({ failure, labels }: FailureNoticeProps) {
  if (failure === null) return null
  switch (failure.kind) {
    case 'problem':
      return (
        <ProblemNotice
          title={failure.problem.title}
          detail={failure.problem.detail}
          errors={failure.problem.errors}
          labels={labels}
        />
      )
    case 'unreachable':
      return <ProblemNotice title={shellMessage('unreachable')} detail={shellMessage('unreachableDetail')} />
    case 'unreadable':
      return <ProblemNotice title={shellMessage('unreadable')} detail={shellMessage('unreadableDetail')} />
  }
}

/** What a failure says of one control, for the control's `wrong`. */
export function wrongAt(failure: Failure | null, pointer: string): string | undefined {
  if (failure?.kind !== 'problem') return undefined
  return failure.problem.errors?.find((error) => error.pointer === pointer)?.detail
}

/** Whether somebody else saved a newer version of the same thing meanwhile. */
export function isStale(failure: Failure | null): boolean {
  return failure?.kind === 'problem' && failure.problem.code === 'version-is-stale'
}
