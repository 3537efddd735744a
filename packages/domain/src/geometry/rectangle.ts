import { assert, type Metres, metres } from '../quantities'
import { type Point, point } from './point'

/** A rectangle along the axes of the pitch; `near` and `far` up the pitch, `left` and `right` across it. */
export type Rectangle = {
  readonly near: Metres
  readonly far: Metres
  readonly left: Metres
  readonly right: Metres
}

export function rectangle(near: number, far: number, left: number, right: number): Rectangle {
  assert(near <= far && left <= right, 'a rectangle must not be inside out')
  return { near: metres(near), far: metres(far), left: metres(left), right: metres(right) }
}

/** Around a middle, `length` up the pitch and `width` across it. */
export function rectangleAround(middle: Point, length: Metres, width: Metres): Rectangle {
  return rectangle(middle.x - length / 2, middle.x + length / 2, middle.y - width / 2, middle.y + width / 2)
}

/** Edges belong to the rectangle; `slack` lets a place stand that much outside (negative: that much inside). */
export function containsPoint(area: Rectangle, place: Point, slack = 0): boolean {
  return (
    place.x >= area.near - slack &&
    place.x <= area.far + slack &&
    place.y >= area.left - slack &&
    place.y <= area.right + slack
  )
}

export function containsRectangle(outer: Rectangle, inner: Rectangle): boolean {
  return inner.near >= outer.near && inner.far <= outer.far && inner.left >= outer.left && inner.right <= outer.right
}

/** The part two rectangles share, or null; touching edges share nothing. */
export function overlapOf(a: Rectangle, b: Rectangle): Rectangle | null {
  const near = Math.max(a.near, b.near)
  const far = Math.min(a.far, b.far)
  const left = Math.max(a.left, b.left)
  const right = Math.min(a.right, b.right)
  return near < far && left < right ? rectangle(near, far, left, right) : null
}

export function overlap(a: Rectangle, b: Rectangle): boolean {
  return overlapOf(a, b) !== null
}

export function areaOf(area: Rectangle): number {
  return (area.far - area.near) * (area.right - area.left)
}

export function middleOf(area: Rectangle): Point {
  return point((area.near + area.far) / 2, (area.left + area.right) / 2)
}

/** The place of the rectangle nearest to a place; the place itself where it lies inside. */
export function nearestInside(area: Rectangle, place: Point): Point {
  return point(Math.min(area.far, Math.max(area.near, place.x)), Math.min(area.right, Math.max(area.left, place.y)))
}

/** Near left, near right, far right, far left. */
export function cornersOf(area: Rectangle): readonly [Point, Point, Point, Point] {
  return [
    point(area.near, area.left),
    point(area.near, area.right),
    point(area.far, area.right),
    point(area.far, area.left),
  ]
}
