'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import { patternEdit } from '@espalier/contract/patterns'
import type { PatternDocument } from '@espalier/domain/pattern'
import { useRouter } from 'next/navigation'
import { useState } from 'react'
import * as z from 'zod/mini'
import { newUuid } from '../../api/identifiers'
import { useCommand } from '../../api/use-command'
import { pages, pageTo } from '../../paths'
import type { useWriting } from '../writing/use-writing'
import type { PatternChange } from './edit-pattern'

type Writing = ReturnType<typeof useWriting<PatternDocument, PatternChange>>
type SaveOptions = { readonly clubId: string; readonly patternId: string | null; readonly writing: Writing }

/** Saves with the version it was written from; a clash is kept beside until the writer has decided. */
export function useSavePattern({ clubId, patternId, writing }: SaveOptions) {
  const router = useRouter()
  const { state, failure, send } = useCommand()
  // Made once, so that pressing again after a lost answer makes one pattern.
  const [newId] = useState(newUuid)
  const [stale, setStale] = useState<{ readonly version: number; readonly document: PatternDocument } | null>(null)
  const { tidied } = writing

  async function saveFrom(version: number | null) {
    if (state === 'sending') return
    const outcome =
      patternId === null || version === null
        ? await send({
            method: 'POST',
            path: pathTo(paths.patterns, { clubId }),
            body: { id: newId, document: tidied },
          })
        : await send({
            method: 'PUT',
            path: pathTo(paths.pattern, { clubId, patternId }),
            body: { document: tidied },
            fromVersion: version,
          })
    if (!outcome.ok) {
      const { failure: why } = outcome
      setStale(why.kind === 'problem' ? readStale(why.problem.current) : null)
      return
    }
    setStale(null)
    writing.settle({ version: outcome.value.version, document: tidied })
    if (patternId === null) router.replace(pageTo(pages.pattern, { clubId, patternId: newId }), { scroll: false })
    else router.refresh()
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

function readStale(current: { readonly version: number; readonly document?: unknown } | undefined) {
  if (current === undefined) return null
  const parsed = z.safeParse(patternEdit, current.document)
  return parsed.success ? { version: current.version, document: parsed.data.document } : null
}
