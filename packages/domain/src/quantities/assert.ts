/** A broken invariant is a bug, never a user's mistake: it is thrown, logged and answered with 500. */
export class InvariantError extends Error {
  override readonly name = 'InvariantError'
}

export function assert(condition: unknown, message: string): asserts condition {
  if (!condition) throw new InvariantError(message)
}

/** Makes a missing case of a closed union a compile error. */
export function unreachable(value: never): never {
  throw new InvariantError(`unexpected case: ${JSON.stringify(value)}`)
}
