import type { CheckChoices, LookCover } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import { useEffect, useMemo, useRef, useState } from 'react'
import { sameValue } from '../writing/same-value'
import type { CheckSetting } from './check-setting'
import { openConversation, type PressureConversation } from './pressure-conversation'
import type { PressureAnswer, PressureQuestion, PressureWords } from './pressure-message'
import { whatIsChecked } from './what-is-checked'

/** An answer never goes without the question it belongs to. */
export type Told<Value> = { readonly question: PressureQuestion; readonly value: Value }

export type UnderPressure = {
  /** What stands on the page now; null while it cannot be played. */
  readonly asked: PressureQuestion | null
  /** The last answers, perhaps to a question before: compare with `isToldOf`. */
  readonly looks: Told<readonly LookCover[]> | null
  readonly pressure: Told<PressureWords> | null
  /** Why nothing more will come for this question. */
  readonly fault: string | null
}

export const NOTHING_TOLD: UnderPressure = { asked: null, looks: null, pressure: null, fault: null }

/** An answer speaks of what stands on the page, not of what stood there before. */
export function isToldOf(told: Told<unknown> | null, asked: PressureQuestion | null): boolean {
  return told !== null && asked !== null && told.question.revision === asked.revision
}

/** True from a question until its last answer. */
export function isWorking({ asked, looks, pressure, fault }: UnderPressure): boolean {
  return asked !== null && fault === null && !(isToldOf(looks, asked) && isToldOf(pressure, asked))
}

/** Works out looks and pressure of what can be played, beside the page, and again whenever what is checked has changed. */
export function useUnderPressure(
  document: PatternDocument | null,
  choices: CheckChoices,
  setting: CheckSetting,
): UnderPressure {
  const [under, setUnder] = useState(NOTHING_TOLD)
  const conversation = useRef<PressureConversation | null>(null)
  const revision = useRef(0)
  // Only what the check reads counts as a change: a title that is being typed asks nothing anew.
  const read = useMemo(() => (document === null ? null : whatIsChecked(document)), [document])
  const [checked, setChecked] = useState(read)
  if (!sameValue(read, checked)) setChecked(read)

  useEffect(() => {
    const opened = openConversation({
      start: () => new Worker(new URL('./pressure.worker.ts', import.meta.url), { type: 'module' }),
      onAnswer: (answer) => setUnder((before) => withAnswer(before, answer)),
    })
    conversation.current = opened
    return () => {
      opened.drop()
      conversation.current = null
    }
  }, [])

  useEffect(() => {
    if (checked === null) {
      conversation.current?.drop()
      setUnder((before) => ({ ...before, asked: null, fault: null }))
      return
    }
    revision.current += 1
    const asked: PressureQuestion = { revision: revision.current, document: checked, choices, setting }
    setUnder((before) => ({ ...before, asked, fault: null }))
    conversation.current?.ask(asked)
  }, [checked, choices, setting])

  return under
}

export function withAnswer(before: UnderPressure, answer: PressureAnswer): UnderPressure {
  const { asked } = before
  if (asked === null || answer.revision !== asked.revision) return before
  switch (answer.part) {
    case 'looks':
      return { ...before, looks: { question: asked, value: answer.looks } }
    case 'pressure':
      return { ...before, pressure: { question: asked, value: answer.pressure } }
    case 'fault':
      return { ...before, fault: answer.fault }
  }
}
