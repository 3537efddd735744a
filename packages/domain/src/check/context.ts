import type { Format } from '../formats'
import type { Point } from '../geometry'
import type { PatternDocument, Step } from '../pattern'
import type { Space, Spot } from '../pitch'
import type { Seconds } from '../quantities'
import type { CheckLimits } from './limits'
import type { CheckNote, Remedy } from './note'
import type { AgeProfile } from './profiles'
import type { Surface } from './surfaces'
import type { TeamReach } from './team-reach'
import type { TimedStep } from './timed-step'
import type { PlacedPlayer, Timeline } from './timeline'

/** Everything a rule may look at. */
export type CheckContext = {
  readonly document: PatternDocument
  readonly space: Space
  readonly format: Format
  readonly profile: AgeProfile
  readonly surface: Surface
  readonly limits: CheckLimits
  /** Measured on the field; null where nobody has. */
  readonly teamReach: TeamReach | null
  readonly timeline: Timeline
  /** Is what is said of this step wanted? Of an answer's way only its own steps are: the rest is the trunk's. */
  readonly isAsked: (stepId: string | null) => boolean
  readonly place: (spot: Spot) => Point
  /** Where everyone is at a time. Several rules look at the same moments, so each is found once. */
  readonly playersAt: (at: Seconds) => readonly PlacedPlayer[]
  /** Plays a changed step in the place of the one at this index, so that a remedy is tried before it is named. */
  readonly retime: (index: number, step: Step) => TimedStep
  /** The same pattern with a remedy applied, played through, for rules whose remedies change more than one step. */
  readonly mended: (remedy: Remedy) => CheckContext
}

export type Rule = (context: CheckContext) => readonly CheckNote[]
