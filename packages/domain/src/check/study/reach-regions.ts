import { add, type Point, scale } from '../../geometry'
import {
  assert,
  type Metres,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  metres,
  type Seconds,
  seconds,
} from '../../quantities'

/** A player who pushes towards a place against a drag that grows with speed: reaches a top speed, never passes it. */
export type DraggedRunner = { readonly topSpeed: MetresPerSecond /** A second. */; readonly drag: number }

export type Disc = { readonly centre: Point; readonly radius: Metres }

/**
 * Everywhere such a player can be after a time: a disc whose centre drifts with the velocity they had,
 * v₀(1 − e^(−αt))/α, and whose radius is v_max(t − (1 − e^(−αt))/α).
 */
export function arrivalDisc(at: Point, velocity: Point, runner: DraggedRunner, elapsed: Seconds): Disc {
  assert(elapsed >= 0 && runner.drag > 0, 'a disc of arrival needs time that has passed and a drag')
  const slowed = (1 - Math.exp(-runner.drag * elapsed)) / runner.drag
  return { centre: add(at, scale(velocity, slowed)), radius: metres(runner.topSpeed * (elapsed - slowed)) }
}

/** A sprint from rest whose speed rises ever more slowly: v = v_max(1 − e^(−t/τ)). */
export function exponentialSprint(
  topSpeed: MetresPerSecond,
  timeConstant: Seconds,
  elapsed: Seconds,
): { readonly length: Metres; readonly speed: number } {
  const left = Math.exp(-elapsed / timeConstant)
  return {
    length: metres(topSpeed * (elapsed - timeConstant * (1 - left))),
    speed: topSpeed * (1 - left),
  }
}

/**
 * Where two players who run towards each other on one line arrive together, both with the same constant acceleration and
 * each with the speed they have: the boundary of their dominant regions on it. The gap closes by (v₁+v₂)t + at².
 */
export function meetOnLine(
  gap: Metres,
  firstSpeed: MetresPerSecond,
  secondSpeed: MetresPerSecond,
  acceleration: MetresPerSecondSquared,
): { readonly after: Seconds; readonly fromFirst: Metres } {
  assert(gap >= 0 && acceleration > 0, 'two players a gap apart accelerate towards each other')
  const closing = firstSpeed + secondSpeed
  const time = (-closing + Math.sqrt(closing * closing + 4 * acceleration * gap)) / (2 * acceleration)
  return { after: seconds(time), fromFirst: metres(firstSpeed * time + (acceleration * time * time) / 2) }
}
