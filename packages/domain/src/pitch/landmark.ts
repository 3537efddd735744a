import type { FormatChoices } from '../formats'
import { containsPoint, type Point, point } from '../geometry'
import { type Metres, metresOf } from '../quantities'
import { LANDMARK_PLACES, type LandmarkPlace } from './landmark-place'
import { breadthDistance, depthDistance, type Measures, measuresOf, spaceRectangle } from './measures'
import type { Space } from './space'
import type { Landmark } from './spot'

/** Edges count as inside; a nanometre forgives the rounding of halves and sums. */
const EDGE_SLACK = 1e-9

/** Up the pitch from the own goal line, inside the space or not; null where there is no such line. */
export function landmarkUp(measures: Measures, place: LandmarkPlace): number | null {
  const { space } = measures
  const depth = depthDistance(measures, place.depth)
  if (depth === null) return null
  if (place.end === 'own') return depth
  if (space.covers === 'half' && !isFarGoalFound(space, place)) return null
  return metresOf(space.lengthMm) - depth
}

/** A half ends at the halfway line: nothing of the far end is there, but a goal may have been carried to that line. */
function isFarGoalFound(space: Space, place: LandmarkPlace): boolean {
  const isGoal = place.depth === 'goal-line' && (place.breadth === 'goal' || place.breadth === 'axis')
  return isGoal && space.goals.some((goal) => goal.end === 'far')
}

/** To the right of the middle, inside the space or not; null where there is no such line. */
export function landmarkRight(measures: Measures, place: LandmarkPlace): number | null {
  const breadth = breadthDistance(measures, place.breadth, place.end)
  return breadth === null ? null : place.hand * breadth
}

export function isInside(space: Space, place: Point): boolean {
  return containsPoint(spaceRectangle(space), place, EDGE_SLACK)
}

/**
 * Where a landmark lies on a space; null where the space does not contain it: the far end of a half, a build-out line
 * in a format without one, an area wider than the space. On a plain space the areas are measured out, not painted.
 */
export function landmarkPoint(space: Space, landmark: Landmark, choices?: FormatChoices): Point | null {
  return measuredLandmark(measuresOf(space, choices), landmark)
}

/** The same, for callers that ask for many landmarks of one space. */
export function measuredLandmark(measures: Measures, landmark: Landmark): Point | null {
  const up = landmarkUp(measures, LANDMARK_PLACES[landmark])
  const right = landmarkRight(measures, LANDMARK_PLACES[landmark])
  if (up === null || right === null) return null
  const place = point(up, right)
  return isInside(measures.space, place) ? place : null
}

/**
 * The build-out line's distance from the own goal line: midway between the top of the penalty area and the halfway
 * line. Null where the format has none, or the space is too short for one.
 */
export function buildOutLine(space: Space): Metres | null {
  return depthDistance(measuresOf(space), 'build-out-line')
}
