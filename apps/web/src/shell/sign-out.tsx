'use client'

import { paths } from '@espalier/contract/paths'
import { useState } from 'react'
import * as z from 'zod/mini'
import { sendCommandFor } from '../api/browser'
import { newUuid } from '../api/identifiers'
import { shellMessage } from '../messages/shell'
import { forgetNames } from '../offline/forget-names'
import { pages } from '../paths'
import { Button } from '../ui/button/button'
import { Status } from '../ui/status/status'

/** Ends the login on the server, then takes names off this phone and leaves the page: nothing of the club stays. */
export function SignOut() {
  const [state, setState] = useState<'ready' | 'leaving' | 'failed'>('ready')

  async function signOut() {
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
      <Button kind="quiet" onClick={signOut} aria-busy={state === 'leaving'}>
        {state === 'leaving' ? shellMessage('signingOut') : shellMessage('signOut')}
      </Button>
    </>
  )
}
