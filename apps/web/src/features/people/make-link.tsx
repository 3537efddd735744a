'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import { useRouter } from 'next/navigation'
import { useState } from 'react'
import { newSecret, newUuid, sha256Hex } from '../../api/identifiers'
import { useCommand } from '../../api/use-command'
import { peopleMessage } from '../../messages/people'
import { pages } from '../../paths'
import { FailureNotice } from '../../shell/failure-notice'
import { Button } from '../../ui/button/button'
import { Dialog } from '../../ui/dialog/dialog'
import { Status } from '../../ui/status/status'

type MakeLinkProps = {
  readonly clubId: string
  readonly memberId: string
  readonly name: string
  readonly again: boolean
}

/** Makes the secret here, in the administrator's browser: the server learns its hash and never the link. */
export function MakeLink({ clubId, memberId, name, again }: MakeLinkProps) {
  const router = useRouter()
  const { state, failure, send } = useCommand()
  const [link, setLink] = useState<string | null>(null)
  const [copied, setCopied] = useState<'no' | 'yes' | 'by-hand'>('no')

  async function make() {
    if (state === 'sending') return
    const token = newSecret()
    const body = { id: newUuid(), tokenHash: await sha256Hex(token) }
    const outcome = await send({ method: 'POST', path: pathTo(paths.signInLinks, { clubId, memberId }), body })
    if (outcome.ok) setLink(`${window.location.origin}${pages.signIn}#${clubId}.${token}`)
  }

  async function copy() {
    if (link === null) return
    try {
      await navigator.clipboard.writeText(link)
      setCopied('yes')
    } catch {
      setCopied('by-hand')
    }
  }

  function close() {
    setLink(null)
    setCopied('no')
    router.refresh()
  }

  return (
    <>
      <Button onClick={make} aria-label={`${peopleMessage(again ? 'makeNewLink' : 'makeLink')}: ${name}`}>
        {peopleMessage(state === 'sending' ? 'making' : again ? 'makeNewLink' : 'makeLink')}
      </Button>
      <FailureNotice failure={failure} />
      <Dialog
        open={link !== null}
        title={peopleMessage('linkTitle', { name })}
        onClose={close}
        closeLabel={peopleMessage('linkDone')}
        presses={
          <Button kind="next" onClick={copy}>
            {peopleMessage('copy')}
          </Button>
        }
      >
        <p>{peopleMessage('linkOnce')}</p>
        <p data-testid="sign-in-link" className="select-all break-all border-y border-wire py-2 text-small">
          {link}
        </p>
        <Status>
          {copied === 'yes' ? peopleMessage('copied') : copied === 'by-hand' ? peopleMessage('copyByHand') : null}
        </Status>
      </Dialog>
    </>
  )
}
