import type { MarkedArea } from '../formats'
import { containsPoint, distance, nearestInside, type Point, type Rectangle, rectangle } from '../geometry'
import { type Millimetres, metresOf, millimetres, millimetresOf } from '../quantities'

/** An area in front of the own goal; its lines belong to it (IFAB Laws of the Game, Law 1). */
export function ownArea(area: MarkedArea): Rectangle {
  const half = metresOf(area.widthMm) / 2
  return rectangle(0, metresOf(area.depthMm), -half, half)
}

/** How far outside a rectangle a place lies, in whole millimetres; zero inside and on its lines. */
export function outsideByMm(area: Rectangle, place: Point): Millimetres {
  if (containsPoint(area, place)) return millimetres(0)
  return millimetresOf(distance(place, nearestInside(area, place)))
}

/** Inside or on the lines, to the millimetre. */
export function isInArea(area: Rectangle, place: Point): boolean {
  return outsideByMm(area, place) === 0
}
