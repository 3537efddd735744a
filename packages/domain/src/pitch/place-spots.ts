import type { Format, FormatChoices } from '../formats'
import { add, between, distance, nearestInside, type Point, point, subtract } from '../geometry'
import { assert, habit, metres, metresOf, millimetres } from '../quantities'
import { isInside, landmarkRight, landmarkUp } from './landmark'
import { LANDMARK_PLACES, type LandmarkPlace } from './landmark-place'
import { type Measures, measuresOf, spaceRectangle } from './measures'
import { nominalSpace } from './nominal-space'
import type { Space } from './space'
import type { Spot } from './spot'

/** How near the ball a spot must be drawn to keep its metres on any space. */
export const NEAR_THE_BALL = habit(metres(15))

/** Where a ball starts when nothing else is said. */
const OWN_GOAL: Spot = { landmark: 'goal-centre', upMm: millimetres(0), rightMm: millimetres(0) }

export type PlacedSpot =
  | {
      readonly spot: Spot
      /** Where it comes to lie; outside the rectangle where the space ends before it. */
      readonly point: Point
      readonly keeps: 'metres' | 'landmark'
      /** Outside: the pattern is cut before it, at a gate. */
      readonly lies: 'inside' | 'outside'
    }
  /** The format it was drawn for has no such landmark. */
  | { readonly spot: Spot; readonly point: null; readonly keeps: null; readonly lies: 'nowhere' }

/**
 * Puts a pattern's spots on tonight's space. Spots near the ball keep their metres from it, far spots keep their
 * landmark. Nothing is shrunk to fit: what comes to lie outside says so, and the pattern is cut there at a gate.
 * `format` is the one the pattern was drawn for, `ball` where its ball starts.
 */
export function placeSpots(
  space: Space,
  format: Format,
  spots: readonly Spot[],
  ball: Spot = OWN_GOAL,
  choices?: FormatChoices,
): readonly PlacedSpot[] {
  return spots.map(spotPlacer(space, format, ball, choices))
}

/** The same for spots that come up one by one: measures once what is the same for all. */
export function spotPlacer(
  space: Space,
  format: Format,
  ball: Spot = OWN_GOAL,
  choices?: FormatChoices,
): (spot: Spot) => PlacedSpot {
  const drawn = measuresOf(nominalSpace(format.formatId), choices)
  const tonight = measuresOf(space, choices)
  const start = drawnPoint(drawn, ball) === null ? OWN_GOAL : ball
  const ballDrawn = drawnPoint(drawn, start) ?? point(0, 0)
  const ballTonight = landmarkedPoint(tonight, start, ballDrawn)
  return (spot) => {
    const asDrawn = drawnPoint(drawn, spot)
    if (asDrawn === null) return { spot, point: null, keeps: null, lies: 'nowhere' }
    const near = distance(asDrawn, ballDrawn) <= NEAR_THE_BALL.value
    const place = near ? add(ballTonight, subtract(asDrawn, ballDrawn)) : landmarkedPoint(tonight, spot, asDrawn)
    const lies = isInside(space, place) ? 'inside' : 'outside'
    return { spot, point: place, keeps: near ? 'metres' : 'landmark', lies }
  }
}

/** Where the spot was drawn, on the format's nominal pitch. */
function drawnPoint(drawn: Measures, spot: Spot): Point | null {
  const place = LANDMARK_PLACES[spot.landmark]
  const up = landmarkUp(drawn, place)
  const right = landmarkRight(drawn, place)
  if (up === null || right === null) return null
  return point(up + metresOf(spot.upMm), right + metresOf(spot.rightMm))
}

/** Where the spot's landmark is tonight, plus the offset; where there is no such landmark, the metres as drawn. */
function landmarkedPoint(tonight: Measures, spot: Spot, asDrawn: Point): Point {
  const place = LANDMARK_PLACES[spot.landmark]
  const up = isLineThere(tonight.space, place) ? landmarkUp(tonight, place) : null
  const right = landmarkRight(tonight, place)
  return point(
    up === null ? asDrawn.x : up + metresOf(spot.upMm),
    right === null ? asDrawn.y : right + metresOf(spot.rightMm),
  )
}

/**
 * The build-out line, the halfway line and the far end of a space that is no whole pitch count only where they can be
 * seen; computing them from its length would shrink the pattern into it.
 */
function isLineThere(space: Space, place: LandmarkPlace): boolean {
  if (space.covers === 'whole') return true
  if (place.end === 'far') return false
  if (place.depth !== 'build-out-line' && place.depth !== 'halfway') return true
  return space.markings[place.depth] !== 'none'
}

/** Where a way from inside the space crosses its edge: the middle of the gate the pattern ends at. Null if it stays inside. */
export function gateAt(space: Space, from: Point, to: Point): Point | null {
  assert(isInside(space, from), 'a way to a gate starts inside the space')
  if (isInside(space, to)) return null
  const halfWidth = metresOf(space.widthMm) / 2
  const length = metresOf(space.lengthMm)
  const shares = [
    to.x > length ? (length - from.x) / (to.x - from.x) : 1,
    to.x < 0 ? -from.x / (to.x - from.x) : 1,
    to.y > halfWidth ? (halfWidth - from.y) / (to.y - from.y) : 1,
    to.y < -halfWidth ? (-halfWidth - from.y) / (to.y - from.y) : 1,
  ]
  const share = Math.max(0, Math.min(...shares))
  return nearestInside(spaceRectangle(space), between(from, to, share))
}
