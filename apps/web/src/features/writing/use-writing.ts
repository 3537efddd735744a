'use client'

import { useEffect, useMemo, useReducer, useRef, useState } from 'react'
import type * as z from 'zod/mini'
import { historyReducer, startHistory } from './history'
import { forgetDraft, keepDraft, readKeptDraft } from './kept-draft'
import { sameValue } from './same-value'

export type Saved<Document> = { readonly version: number | null; readonly document: Document }

type WritingOptions<Document, Edit> = {
  /** The name under which unsaved words are kept, one for each thing. */
  readonly name: string
  readonly saved: Saved<Document>
  readonly change: (document: Document, edit: Edit) => Document
  /** As it would be sent: compared with what is saved, and kept. */
  readonly tidy: (document: Document) => Document
  readonly shape: z.ZodMiniType<Document>
}

/**
 * A document being written on a page: every edit can be taken back, and unsaved words outlive a reload. Saving itself is
 * the caller's, who then calls `settle`.
 */
export function useWriting<Document, Edit>(options: WritingOptions<Document, Edit>) {
  const { name, change, tidy, shape } = options
  const reduce = useMemo(() => historyReducer(change), [change])
  const [history, dispatch] = useReducer(reduce, options.saved.document, (document) => startHistory(document))
  const [saved, setSaved] = useState(options.saved)
  const [isKept, setIsKept] = useState(true)
  const [isBack, setIsBack] = useState(false)
  const isAwake = useRef(false)
  const opened = useRef(options.saved)
  const tidied = useMemo(() => tidy(history.document), [tidy, history.document])
  const isChanged = useMemo(() => !sameValue(tidied, tidy(saved.document)), [tidied, tidy, saved])

  // Once, after the first paint: the server knows nothing of what this tab kept.
  // biome-ignore lint/correctness/useExhaustiveDependencies: reads the tab's store when the page opens and never again
  useEffect(() => {
    isAwake.current = true
    const kept = readKeptDraft(window.sessionStorage, name, shape)
    if (kept === null || sameValue(kept.document, tidy(saved.document))) return
    setSaved((before) => ({ ...before, version: kept.fromVersion }))
    dispatch({ kind: 'replace', document: kept.document })
    setIsBack(true)
  }, [])

  useEffect(() => {
    if (!isAwake.current) return
    if (isChanged) setIsKept(keepDraft(window.sessionStorage, name, { fromVersion: saved.version, document: tidied }))
    else forgetDraft(window.sessionStorage, name)
  }, [isChanged, tidied, name, saved.version])

  return {
    document: history.document,
    tidied,
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    dispatch,
    saved,
    isChanged,
    isKept,
    isBack,
    /** What was sent stands saved now. */
    settle: (settled: Saved<Document>) => {
      setSaved(settled)
      setIsBack(false)
    },
    discard: () => {
      setSaved(opened.current)
      dispatch({ kind: 'replace', document: opened.current.document })
      setIsBack(false)
    },
  }
}
