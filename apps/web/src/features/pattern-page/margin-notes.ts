import type { CheckNote, Remedy, Severity, SignNote } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import type { SourceKind } from '@espalier/domain/quantities'
import { patternsMessage } from '../../messages/patterns'
import { type PatternFault, stepAtPointer } from './tidy-pattern'

/** A note as it stands in the margin: its letter ties sentence, place on the drawing and note together. */
export type MarginNote = {
  readonly letter: string
  readonly stepId: string | null
  readonly severity: Severity
  readonly sentence: string
  /** Value and limit in words; null where a fault has neither. */
  readonly measured: string | null
  readonly origin: { readonly word: string; readonly source: string }
  readonly remedy: Remedy | null
}

const ORIGIN_WORDS = {
  published: 'originPublished',
  study: 'originStudy',
  habit: 'originHabit',
  club: 'originClub',
  memory: 'originMemory',
  computed: 'originComputed',
} as const satisfies Record<SourceKind, string>

const UNIT_WORDS = {
  s: 'unitS',
  m: 'unitM',
  degrees: 'unitDegrees',
  touches: 'unitTouches',
  players: 'unitPlayers',
} as const satisfies Record<CheckNote['unit'], string>

export function originWord(kind: SourceKind): string {
  return patternsMessage(ORIGIN_WORDS[kind])
}

/** Faults first, for nothing else holds before they are mended; then what the check says, in the order of the script. */
export function marginNotes(
  document: PatternDocument,
  faults: readonly PatternFault[],
  notes: readonly CheckNote[],
): readonly MarginNote[] {
  const fromFaults = faults.map(
    ({ pointer, detail }): Omit<MarginNote, 'letter'> => ({
      stepId: stepAtPointer(document, pointer),
      severity: 'to-fix',
      sentence: asSentence(detail),
      measured: null,
      origin: { word: originWord('computed'), source: patternsMessage('faultOrigin') },
      remedy: null,
    }),
  )
  return lettered([...fromFaults, ...notes.map((note) => ({ ...saidIn(note), remedy: note.remedy }))])
}

/** Notes on signs come a moment later than the others: they take the letters after theirs, so that no letter moves. */
export function addSignNotes(notes: readonly MarginNote[], signs: readonly SignNote[]): readonly MarginNote[] {
  return lettered([...notes, ...signs.map((note) => ({ ...saidIn(note), remedy: null }))])
}

function lettered(notes: readonly Omit<MarginNote, 'letter'>[]): readonly MarginNote[] {
  return notes.map((note, index) => ({ ...note, letter: letterAt(index) }))
}

function saidIn(note: CheckNote | SignNote): Omit<MarginNote, 'letter' | 'remedy'> {
  return {
    stepId: note.stepId,
    severity: note.severity,
    sentence: note.sentence,
    measured: measuredWords(note),
    origin: { word: originWord(note.sourceKind), source: note.source },
  }
}

function measuredWords({ value, limit, unit }: Pick<CheckNote, 'value' | 'limit' | 'unit'>): string {
  return patternsMessage('noteValue', {
    value: inHundredths(value),
    limit: inHundredths(limit),
    unit: patternsMessage(UNIT_WORDS[unit]),
  })
}

function inHundredths(value: number): string {
  return String(Math.round(value * 100) / 100).replace('-', '−')
}

/** a to z, then a2 to z2 and so on. */
function letterAt(index: number): string {
  const letter = String.fromCharCode('a'.charCodeAt(0) + (index % 26))
  return index < 26 ? letter : `${letter}${Math.floor(index / 26) + 1}`
}

function asSentence(detail: string): string {
  const first = detail.charAt(0).toUpperCase() + detail.slice(1)
  return /[.!?]$/.test(first) ? first : `${first}.`
}
