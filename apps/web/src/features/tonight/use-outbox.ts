import type { Operation } from '@espalier/contract/records'
import { useCallback, useEffect, useMemo, useState } from 'react'
import type { Failure } from '../../api/browser'
import { dismissRefused, enqueue, listWaiting, sendWaiting } from '../../offline/outbox'
import { isFrom, type Sender, type Waiting } from '../../offline/waiting'
import { isSignedOut } from './is-signed-out'

export type Outbox = {
  /** Null until this phone's outbox has been read. */
  readonly waiting: readonly Waiting[] | null
  /** Writes of this club that somebody else made here and that wait for them. */
  readonly ofOthers: number
  readonly failure: Failure | null
  readonly isSending: boolean
  /** Keeps writes on the phone and sends them; false where the browser keeps nothing. */
  readonly write: (teamId: string, operations: readonly Operation[]) => Promise<boolean>
  readonly send: () => Promise<void>
  readonly dismiss: (id: string) => Promise<void>
}

/**
 * One member's writes on this phone: sent when the page opens, when a signal comes back, and when one is added. Whoever
 * else was signed in here keeps theirs: they are counted, never shown.
 */
export function useOutbox(clubId: string | null, memberId: string | null): Outbox {
  const [held, setHeld] = useState<Held>(NOTHING_READ)
  const [failure, setFailure] = useState<Failure | null>(null)
  const [isSending, setSending] = useState(false)
  const sender = useMemo(() => (clubId === null || memberId === null ? null : { clubId, memberId }), [clubId, memberId])

  const send = useCallback(async () => {
    if (sender === null) return
    setSending(true)
    setHeld(await readHeld(sender))
    const outcome = await sendWaiting(sender)
    // The login has ended while the page stood open: opened again it takes the names off, and what waits stays.
    if (isSignedOut(outcome.failure)) window.location.reload()
    setFailure(outcome.failure)
    setHeld(await readHeld(sender))
    setSending(false)
  }, [sender])

  useEffect(() => {
    void send()
    const again = () => void send()
    window.addEventListener('online', again)
    return () => window.removeEventListener('online', again)
  }, [send])

  const write = useCallback(
    async (teamId: string, operations: readonly Operation[]) => {
      if (sender === null || !(await enqueue(sender, teamId, operations))) return false
      await send()
      return true
    },
    [sender, send],
  )

  const dismiss = useCallback(
    async (id: string) => {
      await dismissRefused(id)
      if (sender !== null) setHeld(await readHeld(sender))
    },
    [sender],
  )

  return { ...held, failure, isSending, write, send, dismiss }
}

type Held = Pick<Outbox, 'waiting' | 'ofOthers'>

const NOTHING_READ: Held = { waiting: null, ofOthers: 0 }

async function readHeld(sender: Sender): Promise<Held> {
  const all = await listWaiting(sender.clubId)
  const waiting = all.filter((each) => isFrom(each, sender))
  return { waiting, ofOthers: all.length - waiting.length }
}
