import type { Operation } from '@espalier/contract/records'
import { useCallback, useEffect, useState } from 'react'
import type { Failure } from '../../api/browser'
import { dismissRefused, enqueue, listWaiting, sendWaiting } from '../../offline/outbox'
import type { Waiting } from '../../offline/waiting'

export type Outbox = {
  /** Null until this phone's outbox has been read. */
  readonly waiting: readonly Waiting[] | null
  readonly failure: Failure | null
  readonly isSending: boolean
  /** Keeps writes on the phone and sends them; false where the browser keeps nothing. */
  readonly write: (teamId: string, operations: readonly Operation[]) => Promise<boolean>
  readonly send: () => Promise<void>
  readonly dismiss: (id: string) => Promise<void>
}

/** The writes of this phone: sent when the page opens, when a signal comes back, and when one is added. */
export function useOutbox(clubId: string | null): Outbox {
  const [waiting, setWaiting] = useState<readonly Waiting[] | null>(null)
  const [failure, setFailure] = useState<Failure | null>(null)
  const [isSending, setSending] = useState(false)

  const send = useCallback(async () => {
    if (clubId === null) return
    setSending(true)
    setWaiting(await listWaiting(clubId))
    const outcome = await sendWaiting(clubId)
    setFailure(outcome.failure)
    setWaiting(await listWaiting(clubId))
    setSending(false)
  }, [clubId])

  useEffect(() => {
    void send()
    const again = () => void send()
    window.addEventListener('online', again)
    return () => window.removeEventListener('online', again)
  }, [send])

  const write = useCallback(
    async (teamId: string, operations: readonly Operation[]) => {
      if (clubId === null || !(await enqueue(clubId, teamId, operations))) return false
      await send()
      return true
    },
    [clubId, send],
  )

  const dismiss = useCallback(
    async (id: string) => {
      await dismissRefused(id)
      if (clubId !== null) setWaiting(await listWaiting(clubId))
    },
    [clubId],
  )

  return { waiting, failure, isSending, write, send, dismiss }
}
