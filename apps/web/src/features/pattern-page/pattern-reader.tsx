'use client'

import type { CheckChoices } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import { useState } from 'react'
import { PatternFacts } from './pattern-facts'
import { PatternSheet } from './pattern-sheet'
import { TeachingRead } from './teaching-read'
import { UnderPressureSection } from './under-pressure'
import { usePatternCheck } from './use-pattern-check'

type PatternReaderProps = {
  readonly document: PatternDocument
  readonly choices: CheckChoices
  /** With looks and pressure, on a page that shows this pattern alone. */
  readonly isPressureShown?: boolean
}

/** A pattern without any form, for whoever reads it: tap a sentence and that step is drawn strong. */
export function PatternReader({ document, choices, isPressureShown = false }: PatternReaderProps) {
  const [stepId, setStepId] = useState<string | null>(document.steps[0]?.stepId ?? null)
  const { reading, under, onSetting } = usePatternCheck(document, choices, isPressureShown)
  return (
    <div className="pattern-print flex flex-col gap-6">
      <PatternSheet
        reading={reading}
        choices={choices}
        stepId={stepId}
        onRead={setStepId}
        opening={<PatternFacts document={document} />}
        onSetting={onSetting}
      />
      {isPressureShown && <UnderPressureSection under={under} reading={reading} choices={choices} reader="coach" />}
      <TeachingRead document={document} />
    </div>
  )
}
