import type { CheckChoices } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import { useMemo, useState } from 'react'
import { type CheckSetting, USUAL_SETTING } from './check-setting'
import { type PatternReading, readPattern, withSignNotes } from './pattern-reading'
import { isToldOf, type UnderPressure, useUnderPressure } from './use-under-pressure'

type PatternCheckOnPage = {
  readonly reading: PatternReading
  readonly under: UnderPressure
  readonly onSetting: (setting: CheckSetting) => void
}

/** All that is checked of the document on a page: the notes at once, looks and pressure as they come, where they are shown. */
export function usePatternCheck(
  document: PatternDocument,
  choices: CheckChoices,
  isPressureShown: boolean,
): PatternCheckOnPage {
  const [setting, onSetting] = useState(USUAL_SETTING)
  const read = useMemo(() => readPattern(document, choices, setting), [document, choices, setting])
  const under = useUnderPressure(read.check !== null && isPressureShown ? read.document : null, choices, setting)
  const { asked, looks } = under
  const reading = useMemo(() => {
    // Signs of an older document are not said of this one.
    const signs = isToldOf(looks, asked) ? (looks?.value ?? []).flatMap((look) => look.notes) : []
    return withSignNotes(read, signs)
  }, [read, looks, asked])
  return { reading, under, onSetting }
}
