import type { Point } from '../../geometry'
import type { Answer, Look } from '../../pattern'
import type { Metres, Seconds } from '../../quantities'
import type { Runner } from '../runner'
import type { Timeline } from '../timeline'
import type { Play } from './play'

/** What is the same for every placing of the opponents. They are of the same age as the players. */
export type PressSetting = {
  readonly runner: Runner
  readonly reaction: Seconds
  readonly reach: Metres
  /** From when the law lets opponents come: where a format holds them back, not before. */
  readonly releasedAt: (timeline: Timeline) => Seconds
  readonly choose: ChooseAnswer
}

/** Which answer of a look the player on the ball takes, with the opponents where they are; null: on as written. */
export type ChooseAnswer = (look: Look, play: Play, opponents: readonly Point[]) => Answer | null
