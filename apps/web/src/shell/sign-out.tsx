'use client'

import { paths } from '@espalier/contract/paths'
import { useState } from 'react'
import * as z from 'zod/mini'
import { sendCommandFor } from '../api/browser'
import { newUuid } from '../api/identifiers'
import { shellMessage } from '../messages/shell'
import { forgetNames } from '../offline/forget-names'
import { listAllWaiting } from '../offline/outbox'
import { pages } from '../paths'
import { Button } from '../ui/button/button'
import { Status } from '../ui/status/status'

/** Ends the login on the server, then takes names off this phone and leaves the page: nothing of the club stays. */
export function SignOut() {
  const [state, setState] = useState<'ready' | 'leaving' | 'failed'>('ready')
  /** Writes that stay here unsent; zero until they were counted. */
  const [unsent, setUnsent] = useState(0)

  async function signOut() {
    if (unsent === 0) {
      const waiting = (await listAllWaiting()).length
      setUnsent(waiting)
      // Said before the login ends, while it can still be sent.
      if (waiting > 0) return
    }
    setState('leaving')
    const command = { method: 'DELETE', path: paths.currentLogin, body: {}, key: newUuid() } as const
    const outcome = await sendCommandFor(command, z.unknown())
    const gone = outcome.ok || (outcome.failure.kind === 'problem' && outcome.failure.problem.code === 'not-signed-in')
    if (!gone) {
      setState('failed')
      return
    }
    await forgetNames()
    window.location.replace(pages.home)
  }

  return (
    <>
      {state === 'failed' && <Status>{shellMessage('signOutFailed')}</Status>}
      {unsent > 0 && (
        <Status>
          {unsent === 1 ? shellMessage('signOutUnsentOne') : shellMessage('signOutUnsentMany', { count: unsent })}
        </Status>
      )}
      <Button kind="quiet" onClick={signOut} aria-busy={state === 'leaving'}>
        {state === 'leaving' ? shellMessage('signingOut') : shellMessage(unsent > 0 ? 'signOutAnyway' : 'signOut')}
      </Button>
    </>
  )
}
