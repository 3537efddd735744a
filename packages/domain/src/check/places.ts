import { FORMAT_IDS, type FormatChoices, type FormatId, formatOf } from '../formats'
import type { Point } from '../geometry'
import { actorOf, type PatternDocument } from '../pattern'
import {
  LANDMARKS,
  type Landmark,
  landmarkPoint,
  nearestSpot,
  nominalSpace,
  type Space,
  type Spot,
  spotPlacer,
} from '../pitch'
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
  const putOut = spotPlacer(space, format, ball)
  // Many rules ask for the same spots.
  const known = new Map<Spot, Point>()
  return (spot) => {
    const before = known.get(spot)
    if (before !== undefined) return before
    const { point } = putOut(spot)
    assert(point, `the format ${document.formatId} has no ${spot.landmark}`)
    known.set(spot, point)
    return point
  }
}

/** The landmarks each format has. */
const KNOWN = new Map<FormatId, ReadonlySet<Landmark>>(
  FORMAT_IDS.map((formatId) => {
    const pitch = nominalSpace(formatId)
    return [formatId, new Set(LANDMARKS.filter((landmark) => landmarkPoint(pitch, landmark) !== null))]
  }),
)

/**
 * A place on the space as a spot that can be written into the document: by a landmark of its own format, also where the
 * space was measured for another.
 */
export function spotFor(document: PatternDocument, space: Space, place: Point): Spot {
  return nearestSpot(space, place, undefined, (landmark) => KNOWN.get(document.formatId)?.has(landmark) === true)
}
