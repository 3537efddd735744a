import type { Format } from '../formats'
import type { Point } from '../geometry'
import type { PatternDocument } from '../pattern'
import type { Space, Spot } from '../pitch'
import type { CheckLimits } from './limits'
import type { CheckNote } from './note'
import type { AgeProfile } from './profiles'
import type { Surface } from './surfaces'
import type { Timeline } from './timeline'

/** Everything a rule may look at. */
export type CheckContext = {
  readonly document: PatternDocument
  readonly space: Space
  readonly format: Format
  readonly profile: AgeProfile
  readonly surface: Surface
  readonly limits: CheckLimits
  readonly timeline: Timeline
  readonly place: (spot: Spot) => Point
  /** Plays a changed document on the same space, so that a remedy is tried before it is named. */
  readonly retime: (document: PatternDocument) => Timeline
}

export type Rule = (context: CheckContext) => readonly CheckNote[]
