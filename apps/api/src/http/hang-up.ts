import type { FastifyReply } from 'fastify'

/** Aborts when whoever asked hangs up before the answer is out: what is computed for them is computed for nobody. */
export function hangUpSignal({ raw }: FastifyReply): AbortSignal {
  const hungUp = new AbortController()
  raw.once('close', () => {
    if (!raw.writableFinished) hungUp.abort()
  })
  return hungUp.signal
}
