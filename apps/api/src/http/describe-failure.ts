export type FailureForLog = { readonly name: string; readonly code: string | null; readonly stack: string | null }

const FRAMES_MAX = 7
const FIRST_FRAME = '\n    at '

/** For the log only, and never the message, which may quote a row; where the message ends, the first frame begins. */
export function describeFailure(error: unknown): FailureForLog {
  const { name, code, stack, message } = (error ?? {}) as Readonly<Partial<Record<keyof Error | 'code', unknown>>>
  return {
    name: typeof name === 'string' ? name : 'unknown',
    code: typeof code === 'string' ? code : null,
    stack: typeof stack === 'string' ? framesOf(stack, typeof message === 'string' ? message : '') : null,
  }
}

function framesOf(stack: string, message: string): string | null {
  // A message may itself look like a frame: search after it where the stack still holds it.
  const messageAt = message === '' ? -1 : stack.indexOf(message)
  const at = stack.indexOf(FIRST_FRAME, messageAt === -1 ? 0 : messageAt + message.length)
  return at === -1
    ? null
    : stack
        .slice(at + 1)
        .split('\n')
        .slice(0, FRAMES_MAX)
        .join('\n')
}

/** The same in the form in which the framework and the proxy log errors of their own. */
export function failureLine(error: unknown) {
  const { name, code, stack } = describeFailure(error)
  return { type: name, code, message: '', stack: stack ?? '' }
}
