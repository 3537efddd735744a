import {
  type CheckChoices,
  type CheckNote,
  checkPattern,
  type PatternCheck,
  PROFILE_FIELDS,
  type SignNote,
} from '@espalier/domain/check'
import { checkShape, type PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'
import { type CheckSetting, checkOptionsOf, USUAL_SETTING } from './check-setting'
import { addSignNotes, type MarginNote, marginNotes } from './margin-notes'
import { answeredPattern, findStep } from './step-path'
import { listFaults, type PatternFault, tidyPattern } from './tidy-pattern'

/** Everything a page says of a document besides showing it. */
export type PatternReading = {
  readonly document: PatternDocument
  /** For whom and on what it was checked. */
  readonly setting: CheckSetting
  /** How many values of the profile it was checked with are the club's own. */
  readonly ownValues: number
  readonly faults: readonly PatternFault[]
  /** Null while a fault leaves nothing that could be played. */
  readonly check: PatternCheck | null
  readonly notes: readonly MarginNote[]
}

/**
 * Checks a document as it stands now: pure, one or two milliseconds, the same as on the server. It runs with the page and
 * not in its worker, so that script, drawing and notes always speak of the same document.
 */
export function readPattern(
  written: PatternDocument,
  choices: CheckChoices,
  setting: CheckSetting = USUAL_SETTING,
): PatternReading {
  const document = tidyPattern(written)
  const faults = listFaults(document)
  const playable = checkShape(document).length === 0
  const options = checkOptionsOf(document, choices, setting)
  const check = playable ? checkPattern(document, nominalSpace(document.formatId), options) : null
  const spoken: readonly CheckNote[] = check?.notes ?? []
  const ownValues = PROFILE_FIELDS.filter((field) => options.profile[field].kind === 'club').length
  const notes = marginNotes(document, faults.filter(isNoTitle), spoken)
  return { document, setting, ownValues, faults, check, notes }
}

/** With what the looks say of their signs, once that is known. */
export function withSignNotes(reading: PatternReading, signs: readonly SignNote[]): PatternReading {
  return signs.length === 0 ? reading : { ...reading, notes: addSignNotes(reading.notes, signs) }
}

/** The title's own field says that it is missing. */
function isNoTitle({ pointer }: PatternFault): boolean {
  return pointer !== '/title'
}

/** What the drawing shows while a step is read: the trunk, or the way an answer takes. */
export function shownPattern(
  document: PatternDocument,
  reading: string | null,
): { readonly document: PatternDocument; readonly step: number | undefined } {
  const found = reading === null ? null : findStep(document, reading)
  if (found === null) return { document, step: undefined }
  return { document: answeredPattern(document, found.list), step: found.before.length }
}

/** Length guidance by age, because errors add up (habit: common practice, no source). */
export function usualStepsMost(ageGroup: string): number {
  const age = /^U(\d+)$/.exec(ageGroup)?.[1]
  if (age === undefined) return 8
  return Number(age) <= 10 ? 5 : Number(age) <= 12 ? 6 : 8
}
