import type { Position, Run } from '../pattern'
import type { Spot } from '../pitch'
import type { SourceKind } from '../quantities'

export const NOTE_CODES = [
  'off-the-space',
  'two-in-one-place',
  'ball-stops-short',
  'receiver-late',
  'pass-too-long',
  'lane-closed',
  'goal-kick-law',
  'build-out-line-law',
  'offside-law',
  'hands-law',
  'lofted-to-standing',
  'heading-limit',
  'goalkeeper-hold-law',
  'punt-law',
  'free-kick-law',
  'throw-in-law',
  'beyond-team-reach',
  'cover-shadow',
  'out-of-view',
  'support-distance',
  'nobody-behind',
  'carry-release',
  'weak-side-over',
  'striker-straight',
] as const
export type NoteCode = (typeof NOTE_CODES)[number]

/**
 * The codes whose notes can be 'to-fix'; every other rule says only what probably does not work. Publishing and counting
 * need no more than these, and they are the cheap ones: none of them tries remedies.
 */
export const TO_FIX_CODES = [
  'off-the-space',
  'ball-stops-short',
  'goal-kick-law',
  'build-out-line-law',
  'offside-law',
  'hands-law',
  'goalkeeper-hold-law',
  'free-kick-law',
  'throw-in-law',
] as const satisfies readonly NoteCode[]

/** To fix: against the law or impossible; it stops publishing. Look at: probably does not work. Note: good to know. */
export const SEVERITIES = ['to-fix', 'look-at', 'note'] as const
export type Severity = (typeof SEVERITIES)[number]

/** What a check says of a step, with the measured value, its limit and where the limit is from. */
export type CheckNote = {
  readonly code: NoteCode
  readonly severity: Severity
  /** Null where the note speaks of the whole pattern, such as a starting place. */
  readonly stepId: string | null
  readonly position: Position | null
  readonly value: number
  readonly limit: number
  readonly unit: 's' | 'm' | 'degrees' | 'touches' | 'players'
  readonly sourceKind: SourceKind
  readonly source: string
  /** What a coach reads. */
  readonly sentence: string
  readonly remedy: Remedy | null
}

/** A change that was tried and silences the note. */
export type Remedy =
  | {
      readonly kind: 'start-run'
      readonly stepId: string
      readonly position: Position
      readonly start: Run['start']
      readonly sentence: string
    }
  | {
      readonly kind: 'meet-at'
      readonly stepId: string
      readonly position: Position
      readonly spot: Spot
      readonly sentence: string
    }
  /** The player comes to the ball with a run of their own, in place of the one they made in this step. */
  | {
      readonly kind: 'come-to'
      readonly stepId: string
      readonly position: Position
      readonly spot: Spot
      readonly start: Run['start']
      readonly sentence: string
    }
  /** The player stays where they are in this step. */
  | { readonly kind: 'drop-run'; readonly stepId: string; readonly position: Position; readonly sentence: string }
