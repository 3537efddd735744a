'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { PatternSummary } from '@espalier/contract/patterns'
import type { DraftDocument, VersionContent } from '@espalier/domain/curriculum'
import { useRouter } from 'next/navigation'
import { useState } from 'react'
import type { Failure } from '../../api/browser'
import { newUuid } from '../../api/identifiers'
import { useCommand } from '../../api/use-command'
import { curriculaMessage } from '../../messages/curricula'
import { pages, pageTo } from '../../paths'
import { FailureNotice } from '../../shell/failure-notice'
import { Button } from '../../ui/button/button'
import { Dialog } from '../../ui/dialog/dialog'
import { PublishFaults } from './publish-faults'
import { differenceSentences, publishSentences } from './publish-words'

type PublishPressProps = {
  readonly clubId: string
  readonly curriculumId: string
  /** The draft as it stands saved. */
  readonly draft: DraftDocument
  readonly version: number | null
  readonly patterns: readonly PatternSummary[]
  readonly latest: VersionContent | null
  readonly offBecause: string | null
}

/** Publishes the saved draft, after saying in words what that will freeze. */
export function PublishPress(props: PublishPressProps) {
  const { clubId, curriculumId, draft, version, latest, offBecause } = props
  const router = useRouter()
  const { state, failure, send } = useCommand()
  const [isOpen, setIsOpen] = useState(false)
  const [id, setId] = useState(newUuid)
  const number = (latest?.number ?? 0) + 1
  const differences = differenceSentences(props)

  async function publish() {
    if (state === 'sending' || version === null) return
    const path = pathTo(paths.versions, { clubId, curriculumId })
    const outcome = await send({ method: 'POST', path, body: { id }, fromVersion: version })
    // Refused, it was none and the next one is another; without an answer it may have been done, and stays the same one.
    if (outcome.ok || outcome.failure.kind === 'problem') setId(newUuid())
    if (!outcome.ok) return
    setIsOpen(false)
    router.push(pageTo(pages.version, { clubId, curriculumId, number: outcome.value.version ?? number }))
  }

  return (
    <>
      <Button offBecause={offBecause} onClick={() => setIsOpen(true)}>
        {curriculaMessage('publish', { number })}
      </Button>
      <Dialog
        open={isOpen}
        title={curriculaMessage('publishTitle', { number, name: draft.name })}
        onClose={() => setIsOpen(false)}
        closeLabel={curriculaMessage('publishNot')}
        presses={
          <Button kind="next" onClick={publish} aria-busy={state === 'sending'}>
            {curriculaMessage(state === 'sending' ? 'publishing' : 'publish', { number })}
          </Button>
        }
      >
        {publishSentences(props).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {latest !== null && (
          <div>
            <p className="font-semibold">{curriculaMessage('differences', { number: latest.number })}</p>
            {differences.length === 0 ? (
              <p>{curriculaMessage('noDifferences')}</p>
            ) : (
              <ul>
                {differences.map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            )}
          </div>
        )}
        <p className="text-small text-ink-soft">{curriculaMessage('publishForGood')}</p>
        <PublishRefusal clubId={clubId} draft={draft} failure={failure} />
      </Dialog>
    </>
  )
}

type PublishRefusalProps = {
  readonly clubId: string
  readonly draft: DraftDocument
  readonly failure: Failure | null
}

/** Why it was not published, by name, with a way to each pattern that is to be mended. */
export function PublishRefusal({ clubId, draft, failure }: PublishRefusalProps) {
  if (failure === null) return null
  if (failure.kind !== 'problem') return <FailureNotice failure={failure} />
  const { problem } = failure
  return (
    <div role="alert" className="border-l-[7px] border-double border-ink pl-3">
      <p className="font-semibold">{problem.title}</p>
      {problem.detail !== undefined && <p>{problem.detail}</p>}
      {problem.code === 'version-is-stale' && <p>{curriculaMessage('publishStale')}</p>}
      <PublishFaults clubId={clubId} draft={draft} faults={problem.errors ?? []} />
    </div>
  )
}
