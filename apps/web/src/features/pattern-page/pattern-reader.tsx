'use client'

import type { FormatChoices } from '@espalier/domain/formats'
import type { PatternDocument } from '@espalier/domain/pattern'
import { useMemo, useState } from 'react'
import { PatternFacts } from './pattern-facts'
import { readPattern } from './pattern-reading'
import { PatternSheet } from './pattern-sheet'
import { TeachingRead } from './teaching-read'

type PatternReaderProps = { readonly document: PatternDocument; readonly choices: FormatChoices }

/** A pattern without any form, for whoever reads it: tap a sentence and that step is drawn strong. */
export function PatternReader({ document, choices }: PatternReaderProps) {
  const [stepId, setStepId] = useState<string | null>(document.steps[0]?.stepId ?? null)
  const reading = useMemo(() => readPattern(document, choices), [document, choices])
  return (
    <div className="pattern-print flex flex-col gap-6">
      <PatternSheet
        reading={reading}
        choices={choices}
        stepId={stepId}
        onRead={setStepId}
        opening={<PatternFacts document={document} />}
      />
      <TeachingRead document={document} />
    </div>
  )
}
