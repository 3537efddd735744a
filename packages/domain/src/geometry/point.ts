import { type Metres, metres } from '../quantities'

/**
 * A place or a difference between two places, in the pitch frame: the origin is the middle of the own goal line,
 * `x` runs up the pitch, `y` to the right as the team attacks.
 */
export type Point = { readonly x: Metres; readonly y: Metres }

export function point(x: number, y: number): Point {
  // Negative zero is the same place; without this two equal places could differ when compared or written down.
  return { x: metres(x === 0 ? 0 : x), y: metres(y === 0 ? 0 : y) }
}

export function add(a: Point, b: Point): Point {
  return point(a.x + b.x, a.y + b.y)
}

/** From b to a. */
export function subtract(a: Point, b: Point): Point {
  return point(a.x - b.x, a.y - b.y)
}

export function scale(a: Point, factor: number): Point {
  return point(a.x * factor, a.y * factor)
}

export function distance(a: Point, b: Point): Metres {
  const dx = a.x - b.x
  const dy = a.y - b.y
  // A square root is rounded alike by every engine, a hypotenuse is not; and lengths on a pitch need no scaling.
  return metres(Math.sqrt(dx * dx + dy * dy))
}

/** The place a share of the way from a to b: 0 is a, 1 is b. */
export function between(a: Point, b: Point, share: number): Point {
  return point(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share)
}

/** The angle at `at` between the directions to a and to b, 0 to 180 degrees; 0 where a or b is `at` itself. */
export function angleDegrees(at: Point, a: Point, b: Point): number {
  const ax = a.x - at.x
  const ay = a.y - at.y
  const bx = b.x - at.x
  const by = b.y - at.y
  const across = ax * by - ay * bx
  const along = ax * bx + ay * by
  // No direction at all: the arc tangent of a negative zero would call that a half turn.
  if (across === 0 && along === 0) return 0
  // The two-argument arc tangent stays exact near 0 and 180 degrees, where the arc cosine loses half its digits.
  return (Math.abs(Math.atan2(across, along)) * 180) / Math.PI
}
