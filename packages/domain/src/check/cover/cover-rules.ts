import { type Format, type FormatChoices, formatOf } from '../../formats'
import type { PatternDocument } from '../../pattern'
import type { Space } from '../../pitch'
import { type CheckLimits, DEFAULT_LIMITS } from '../limits'
import { type Setting, settingOf } from '../play-step'
import { type AgeProfile, profileFor } from '../profiles'
import type { Surface } from '../surfaces'
import { type CoverLimits, DEFAULT_COVER_LIMITS } from './cover-limits'

export type CoverOptions = {
  /** Players of this profile; by default that of the pattern's age group. */
  readonly profile?: AgeProfile
  /** X of this profile; by default that of the players. */
  readonly opponents?: AgeProfile
  readonly surface?: Surface
  readonly limits?: Partial<CheckLimits>
  readonly coverLimits?: Partial<CoverLimits>
  readonly choices?: FormatChoices
  /** Width of a place; one metre unless a coarser picture is enough. */
  readonly gridMm?: number
}

/** What is the same for every look of a document. */
export type CoverRules = {
  readonly document: PatternDocument
  readonly space: Space
  readonly format: Format
  readonly opponents: AgeProfile
  readonly limits: CheckLimits
  readonly coverLimits: CoverLimits
  readonly play: Setting
  readonly gridMm: number
  /** 1 where the pattern is written for the right, −1 for the left: ties fall the same way in the mirrored pattern. */
  readonly hand: 1 | -1
}

const GRID_MM = 1000

export function coverRules(document: PatternDocument, space: Space, options: CoverOptions): CoverRules {
  const { choices } = options
  const profile = options.profile ?? profileFor(document.ageGroup)
  return {
    document,
    space,
    opponents: options.opponents ?? profile,
    format: formatOf(document.formatId, choices),
    limits: { ...DEFAULT_LIMITS, ...options.limits },
    coverLimits: { ...DEFAULT_COVER_LIMITS, ...options.coverLimits },
    play: settingOf(document, space, profile, options.surface ?? 'normal', choices),
    gridMm: options.gridMm ?? GRID_MM,
    hand: document.writtenFor === 'left' ? -1 : 1,
  }
}
