import { type FormatChoices, formatOf } from '../formats'
import type { PatternDocument } from '../pattern'
import type { Space } from '../pitch'
import type { CheckContext, Rule } from './context'
import { type CheckLimits, DEFAULT_LIMITS } from './limits'
import { type CheckNote, NOTE_CODES, type NoteCode } from './note'
import { settingOf } from './play-step'
import { type AgeProfile, profileFor } from './profiles'
import { RULES } from './rules'
import type { Surface } from './surfaces'
import { playThrough, type Timeline } from './timeline'

/** Stored with every published version: notes of another version may differ from today's. */
export const CHECK_VERSION = '1'

export type CheckOptions = {
  /** Players of this profile; by default that of the pattern's age group. */
  readonly profile?: AgeProfile
  readonly surface?: Surface
  readonly limits?: Partial<CheckLimits>
  readonly choices?: FormatChoices
}

export type PatternCheck = { readonly timeline: Timeline; readonly notes: readonly CheckNote[] }

/**
 * Plays a pattern on a space and says what does not fit together. Pure and deterministic: browser and server agree.
 * The document must have passed `checkShape`. Notes come in the order of the script.
 */
export function checkPattern(document: PatternDocument, space: Space, options: CheckOptions = {}): PatternCheck {
  return checkWith(RULES, document, space, options)
}

/** The same with a table of rules of one's own; tests break one rule at a time with it. */
export function checkWith(
  rules: Readonly<Record<NoteCode, Rule>>,
  document: PatternDocument,
  space: Space,
  options: CheckOptions = {},
): PatternCheck {
  const context = contextOf(document, space, options)
  const notes = NOTE_CODES.flatMap((code) => rules[code](context))
  return { timeline: context.timeline, notes: inScriptOrder(document, notes) }
}

function contextOf(document: PatternDocument, space: Space, options: CheckOptions): CheckContext {
  const { choices } = options
  const profile = options.profile ?? profileFor(document.ageGroup)
  const surface = options.surface ?? 'normal'
  const setting = settingOf(document, space, profile, surface, choices)
  const retime = (changed: PatternDocument) => playThrough(changed, setting)
  return {
    document,
    space,
    profile,
    surface,
    format: formatOf(document.formatId, choices),
    limits: { ...DEFAULT_LIMITS, ...options.limits },
    timeline: retime(document),
    place: setting.place,
    retime,
  }
}

/** What speaks of the whole pattern first, then step by step; within a step by the order of the codes. */
function inScriptOrder(document: PatternDocument, notes: readonly CheckNote[]): readonly CheckNote[] {
  const rank = new Map(document.steps.map((step, index) => [step.stepId, index]))
  const rankOf = (note: CheckNote) => (note.stepId === null ? -1 : (rank.get(note.stepId) ?? -1))
  return [...notes].sort((a, b) => rankOf(a) - rankOf(b))
}
