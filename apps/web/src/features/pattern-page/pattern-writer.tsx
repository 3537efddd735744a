'use client'

import type { CheckChoices } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import { useDeferredValue, useEffect, useRef, useState } from 'react'
import { patternsMessage } from '../../messages/patterns'
import { Section } from '../../shell/section'
import { KeptNotice } from '../writing/kept-notice'
import { SaveBar } from '../writing/save-bar'
import { SaveFailure } from '../writing/save-failure'
import { StaleChoice } from '../writing/stale-choice'
import { useWriting } from '../writing/use-writing'
import type { OnChange } from './change-callback'
import { changePattern } from './edit-pattern'
import { FrameForm } from './frame-form'
import { AnswerForm, LookPresses } from './look-form'
import { PatternFacts } from './pattern-facts'
import { patternLines } from './pattern-lines'
import type { PatternReading } from './pattern-reading'
import { PatternSheet } from './pattern-sheet'
import { PlacesForm, SurroundingsForm } from './places-form'
import { ScriptTail } from './script-tail'
import { StepForm } from './step-form'
import { findStep } from './step-path'
import { TeachingForm } from './teaching-form'
import { TeachingRead } from './teaching-read'
import { tidyPattern, unfinishedPattern } from './tidy-pattern'
import { UnderPressureSection } from './under-pressure'
import { usePatternCheck } from './use-pattern-check'
import { useSavePattern } from './use-save-pattern'

type PatternWriterProps = {
  readonly clubId: string
  /** Null for a pattern that was never saved. */
  readonly patternId: string | null
  readonly saved: { readonly version: number | null; readonly document: PatternDocument }
  readonly choices: CheckChoices
}

/** The page a pattern is written on: forms change it, and script, drawing and notes follow at once. */
export function PatternWriter({ clubId, patternId, saved, choices }: PatternWriterProps) {
  const writing = useWriting({
    name: `pattern ${clubId} ${patternId ?? 'new'}`,
    saved,
    change: changePattern,
    tidy: tidyPattern,
    shape: unfinishedPattern,
  })
  const { document, dispatch } = writing
  const [stepId, setStepId] = useState<string | null>(document.steps[0]?.stepId ?? null)
  const page = useRef<HTMLDivElement>(null)
  const moveFocusTo = useRef<string | null>(null)
  // Typing comes first: check and drawing follow as soon as there is time.
  const settled = useDeferredValue(document)
  const { reading, under, onSetting } = usePatternCheck(settled, choices, true)
  const saving = useSavePattern({ clubId, patternId, writing })
  const onChange: OnChange = (edit, typingIn) => {
    dispatch(typingIn === undefined ? { kind: 'edit', edit } : { kind: 'edit', edit, typingIn })
    const next = stepReadAfter(changePattern(document, edit), document, stepId)
    if (next === stepId) return
    setStepId(next)
    moveFocusTo.current = next
  }
  // The press that added or took out a step may be gone with it: the keyboard goes on at the step that is read now, as
  // soon as the page shows it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the step appears only when the page has followed the document
  useEffect(() => {
    const step = moveFocusTo.current
    const press = step === null ? null : page.current?.querySelector<HTMLElement>(`[data-step="${step}"]`)
    if (press === null || press === undefined) return
    moveFocusTo.current = null
    press.focus()
  }, [stepId, reading])
  const formOf = (id: string) => {
    const found = findStep(document, id)
    return found === null ? null : <StepForm document={document} found={found} onChange={onChange} />
  }
  const lookFormOf = (lookId: string, at: number, letter: string) => {
    const look = document.looks.find((each) => each.lookId === lookId)
    return look === undefined ? null : <AnswerForm {...{ document, look, at, letter, onChange }} />
  }
  return (
    <div ref={page} className="pattern-print flex flex-col gap-6">
      <KeptNotice isBack={writing.isBack} onDiscard={writing.discard} />
      {saving.stale !== null && (
        <StaleChoice
          version={saving.stale.version}
          mine={patternLines(writing.tidied)}
          theirs={patternLines(saving.stale.document)}
          onKeepMine={saving.keepMine}
          onTakeTheirs={saving.takeTheirs}
        />
      )}
      <PatternSheet
        reading={reading}
        choices={choices}
        stepId={stepId}
        onRead={setStepId}
        opening={
          <>
            <div className="no-print">
              <FrameForm document={document} onChange={onChange} />
            </div>
            <div className="hidden print:block">
              <PatternFacts document={document} />
            </div>
          </>
        }
        tail={<ScriptTail reading={reading} onChange={onChange} />}
        stepForm={(id) => <div className="no-print">{formOf(id)}</div>}
        answerForm={(lookId, at, letter) => <div className="no-print">{lookFormOf(lookId, at, letter)}</div>}
        lookPresses={(id, number) => (
          <div className="no-print">
            <LookPresses document={document} stepId={id} number={number} onChange={onChange} />
          </div>
        )}
        onMend={(remedy) => onChange({ kind: 'mend', remedy })}
        onSetting={onSetting}
      />
      <UnderPressureSection under={under} reading={reading} choices={choices} reader="director" />
      <div className="no-print flex flex-col gap-6">
        <Section id="places" title={patternsMessage('places')} kind="do">
          <PlacesForm document={document} onChange={onChange} />
        </Section>
        <Section id="surroundings" title={patternsMessage('surroundings')} kind="do">
          <SurroundingsForm document={document} onChange={onChange} />
        </Section>
        <Section id="teaching" title={patternsMessage('teaching')} kind="do">
          <TeachingForm document={document} onChange={onChange} />
        </Section>
      </div>
      <div className="hidden print:block">
        <TeachingRead document={document} />
      </div>
      <SaveBar
        notice={<SaveFailure failure={saving.failure} isShownAsClash={saving.stale !== null} />}
        version={writing.saved.version}
        isChanged={writing.isChanged}
        isKept={writing.isKept}
        sending={saving.isSending}
        offBecause={offBecause(reading, writing.isChanged || writing.saved.version === null)}
        canUndo={writing.canUndo}
        canRedo={writing.canRedo}
        onSave={saving.save}
        onUndo={() => dispatch({ kind: 'undo' })}
        onRedo={() => dispatch({ kind: 'redo' })}
      />
    </div>
  )
}

/** A new step is read at once, so that its form is open; a step that is gone gives way to the one before it. */
export function stepReadAfter(next: PatternDocument, before: PatternDocument, reading: string | null): string | null {
  const known = new Set(allStepIds(before))
  const added = allStepIds(next).find((id) => !known.has(id))
  if (added !== undefined) return added
  if (reading === null || findStep(next, reading) !== null) return reading
  const at = before.steps.findIndex((step) => step.stepId === reading)
  return next.steps[Math.max(0, at - 1)]?.stepId ?? null
}

function allStepIds(document: PatternDocument): readonly string[] {
  const answers = document.looks.flatMap((look) => look.answers.flatMap((answer) => answer.steps))
  return [...document.steps, ...answers].map((step) => step.stepId)
}

function offBecause({ faults }: PatternReading, hasNews: boolean): string | null {
  if (!hasNews) return patternsMessage('nothingNew')
  const [first] = faults
  if (first === undefined) return null
  return first.pointer === '/title' ? first.detail : patternsMessage('saveOff', { count: faults.length })
}
