import { type FormatChoices, formatOf } from '../formats'
import type { Point } from '../geometry'
import { actorOf, type PatternDocument } from '../pattern'
import { placeSpots, type Space, type Spot } from '../pitch'
import { assert } from '../quantities'

/**
 * Where the spots of a document lie on a space: near the ball they keep their metres, far from it their landmark, the same
 * as the set-out puts them. The document must have passed `checkShape`, so that its format has every landmark it names.
 */
export function placerFor(document: PatternDocument, space: Space, choices?: FormatChoices): (spot: Spot) => Point {
  const format = formatOf(document.formatId, choices)
  const first = document.steps[0]
  const starter = first === undefined ? undefined : actorOf(first.action)
  const ball = document.positions.find((each) => each.position === starter)?.spot
  // A spot is asked for by many rules; it is worked out once.
  const known = new Map<Spot, Point>()
  return (spot) => {
    const before = known.get(spot)
    if (before !== undefined) return before
    const placed = placeSpots(space, format, [spot], ball)[0]
    assert(placed?.point, `the format ${document.formatId} has no ${spot.landmark}`)
    known.set(spot, placed.point)
    return placed.point
  }
}
