import type { Millimetres, SourceKind } from '../quantities'

export const SPACE_NOTE_CODES = [
  'shorter-than-format',
  'longer-than-format',
  'narrower-than-format',
  'wider-than-format',
  'wider-than-long',
  'penalty-area-does-not-fit',
  'build-out-line-does-not-fit',
  'goal-wider-than-format',
  'goal-wider-than-space',
  'no-own-goal',
  'goal-movable',
] as const
export type SpaceNoteCode = (typeof SPACE_NOTE_CODES)[number]

/** Something worth knowing about a space; never a refusal, a coach plays where the club has room. */
export type SpaceNote = {
  readonly code: SpaceNoteCode
  readonly sentence: string
  /** What was measured, and what it was held against; null where the note is not about a length. */
  readonly valueMm: Millimetres | null
  readonly limitMm: Millimetres | null
  readonly kind: SourceKind
  readonly source: string
}

/** As a coach reads a length: metres with one decimal. */
export function inMetres(length: Millimetres): string {
  return `${(length / 1000).toFixed(1)} m`
}
