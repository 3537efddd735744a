'use client'

import type { CommandResult } from '@espalier/contract/commands'
import { commandResult } from '@espalier/contract/commands'
import { useRef, useState } from 'react'
import type * as z from 'zod/mini'
import { type Command, type Failure, type Outcome, sendCommandFor } from './browser'
import { newUuid } from './identifiers'

export type CommandState = 'idle' | 'sending' | 'done'

type KeylessCommand = Omit<Command, 'key'>

/**
 * Sends commands from a form. Pressing again after a lost answer sends the same command with the same key, so nothing
 * happens twice; a changed command gets a new key. The failure stays until the next press.
 */
export function useCommand() {
  const [state, setState] = useState<CommandState>('idle')
  const [failure, setFailure] = useState<Failure | null>(null)
  const unsettled = useRef<{ readonly fingerprint: string; readonly key: string } | null>(null)

  async function sendFor<Value>(command: KeylessCommand, shape: z.ZodMiniType<Value>): Promise<Outcome<Value>> {
    const fingerprint = JSON.stringify([command.method, command.path, command.body, command.fromVersion])
    const key = unsettled.current?.fingerprint === fingerprint ? unsettled.current.key : newUuid()
    unsettled.current = { fingerprint, key }
    setState('sending')
    setFailure(null)
    const outcome = await sendCommandFor({ ...command, key }, shape)
    if (outcome.ok) unsettled.current = null
    setFailure(outcome.ok ? null : outcome.failure)
    setState(outcome.ok ? 'done' : 'idle')
    return outcome
  }

  const send = (command: KeylessCommand): Promise<Outcome<CommandResult>> => sendFor(command, commandResult)
  return { state, failure, send, sendFor }
}
