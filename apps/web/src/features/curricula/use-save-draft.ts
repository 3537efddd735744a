'use client'

import { draftEdit } from '@espalier/contract/curricula'
import { paths, pathTo } from '@espalier/contract/paths'
import type { DraftDocument } from '@espalier/domain/curriculum'
import { useRouter } from 'next/navigation'
import { useState } from 'react'
import * as z from 'zod/mini'
import { useCommand } from '../../api/use-command'
import type { useWriting } from '../writing/use-writing'
import type { DraftChange } from './edit-draft'

type Writing = ReturnType<typeof useWriting<DraftDocument, DraftChange>>
type SaveOptions = { readonly clubId: string; readonly curriculumId: string; readonly writing: Writing }

/** Saves a draft with the version it was written from; a clash is kept beside until the writer has decided. */
export function useSaveDraft({ clubId, curriculumId, writing }: SaveOptions) {
  const router = useRouter()
  const { state, failure, send } = useCommand()
  const [stale, setStale] = useState<{ readonly version: number; readonly document: DraftDocument } | null>(null)

  async function saveFrom(version: number | null) {
    if (state === 'sending' || version === null) return
    const document = writing.tidied
    const path = pathTo(paths.draft, { clubId, curriculumId })
    const outcome = await send({ method: 'PUT', path, body: { document }, fromVersion: version })
    if (!outcome.ok) {
      const { failure: why } = outcome
      setStale(why.kind === 'problem' ? readStaleDraft(why.problem.current) : null)
      return
    }
    setStale(null)
    writing.settle({ version: outcome.value.version, document })
    router.refresh()
  }

  return {
    isSending: state === 'sending',
    failure,
    stale,
    save: () => saveFrom(writing.saved.version),
    keepMine: () => saveFrom(stale?.version ?? null),
    takeTheirs: () => {
      if (stale === null) return
      writing.settle(stale)
      writing.dispatch({ kind: 'replace', document: stale.document })
      setStale(null)
    },
  }
}

/** The draft that came with a refusal: what stands saved now. */
export function readStaleDraft(current: { readonly version: number; readonly document?: unknown } | undefined) {
  if (current === undefined) return null
  const parsed = z.safeParse(draftEdit, current.document)
  return parsed.success ? { version: current.version, document: parsed.data.document } : null
}
