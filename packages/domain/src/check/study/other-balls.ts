import { type Metres, type MetresPerSecond, metres, metresPerSecond, type Seconds, seconds } from '../../quantities'
import { GRAVITY } from '../ball'

/** What becomes of a ball struck without spin: it slides until the ground has turned it, then rolls. */
export type SlideToRoll = {
  readonly rollingSpeed: MetresPerSecond
  readonly slidesFor: Seconds
  readonly slidesOver: Metres
}

/**
 * A thin shell (I = ⅔mr²) kicked without spin rolls once it has lost two fifths of its speed: 3/5·v₀ after 0.4·v₀/(μg), over
 * 0.32·v₀²/(μg). The check's constant deceleration is the mean of both phases; this says what it hides.
 */
export function slideToRoll(releaseSpeed: MetresPerSecond, friction: number): SlideToRoll {
  const deceleration = friction * GRAVITY
  return {
    rollingSpeed: metresPerSecond(0.6 * releaseSpeed),
    slidesFor: seconds((0.4 * releaseSpeed) / deceleration),
    slidesOver: metres((0.32 * releaseSpeed * releaseSpeed) / deceleration),
  }
}

/** A ball that loses speed in proportion to it, v = v₀e^(−kt): an alternative to constant deceleration. */
export type DraggedBall = { readonly releaseSpeed: MetresPerSecond /** A second. */; readonly drag: number }

/** How far such a ball comes at most: v₀/k. */
export function draggedReach({ releaseSpeed, drag }: DraggedBall): Metres {
  return metres(releaseSpeed / drag)
}

export function draggedSpeed({ releaseSpeed, drag }: DraggedBall, length: Metres): MetresPerSecond {
  return metresPerSecond(Math.max(0, releaseSpeed - drag * length))
}

/** Time to a length, −ln(1 − kd/v₀)/k; null where the ball never gets there. */
export function draggedDuration(ball: DraggedBall, length: Metres): Seconds | null {
  const left = 1 - (ball.drag * length) / ball.releaseSpeed
  return left <= 0 ? null : seconds(-Math.log(left) / ball.drag)
}
