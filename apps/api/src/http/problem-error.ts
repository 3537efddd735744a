import type { Problem, ProblemCode } from '@espalier/contract/problems'
import type { Result } from '@espalier/domain/quantities'

export type ProblemPointer = { readonly pointer: string; readonly detail: string; readonly code?: string }

/** An expected refusal on its way out: a code of the contract, and what points at the fault. */
export type Refusal = {
  readonly code: ProblemCode
  readonly detail?: string
  readonly errors?: readonly ProblemPointer[]
  readonly current?: NonNullable<Problem['current']>
  /** With 429: whole seconds until another try may succeed. */
  readonly retryAfterSeconds?: number
}

/** Carries a refusal from a handler or hook to the one place that writes problems. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError'

  constructor(readonly refusal: Refusal) {
    super(refusal.code)
  }
}

/** The value of a result, or its refusal thrown towards the answer. */
export function unwrap<Value>(result: Result<Value, Refusal>): Value {
  if (!result.ok) throw new ProblemError(result.refusal)
  return result.value
}
