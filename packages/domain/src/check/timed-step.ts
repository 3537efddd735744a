import type { Point } from '../geometry'
import type { BallAction, Position } from '../pattern'
import type { Metres, Seconds } from '../quantities'
import type { BallFlight } from './ball-played'

/** One step in time. Times count from the first touch of the restart. */
export type TimedStep = {
  readonly stepId: string
  readonly kind: BallAction['kind']
  readonly actor: Position
  /** Null for a shot. */
  readonly receiver: Position | null
  /** When the ball is played or the carry begins. */
  readonly startsAt: Seconds
  readonly from: Point
  /** Where the ball is met: the receiver's place, the space played into, the end of the carry, the target. */
  readonly to: Point
  readonly flight: BallFlight
  readonly ballArrivesAt: Seconds
  /** When the receiver is at `to`; null for a shot. */
  readonly receiverArrivesAt: Seconds | null
  /** When the ball is under control: the later of the two. */
  readonly receivedAt: Seconds
  /** What the ball lacks of its way because the kick cannot be harder; zero where it arrives. */
  readonly shortBy: Metres
}
