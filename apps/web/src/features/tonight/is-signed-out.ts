import type { Failure } from '../../api/browser'

/** Whether the club said that nobody is signed in here. */
export function isSignedOut(failure: Failure | null): boolean {
  return failure?.kind === 'problem' && failure.problem.code === 'not-signed-in'
}
