import type { FormatChoices } from '../formats'
import { type Point, point } from '../geometry'
import { assert, metres, metresOf, millimetresOf } from '../quantities'
import { landmarkPoint, measuredLandmark } from './landmark'
import { measuresOf } from './measures'
import type { Space } from './space'
import { LANDMARKS, type Landmark, type Spot } from './spot'

/** Where a spot lies on a space, which may be outside its rectangle; null where its landmark does not exist there. */
export function spotPoint(space: Space, spot: Spot, choices?: FormatChoices): Point | null {
  const landmark = landmarkPoint(space, spot.landmark, choices)
  if (landmark === null) return null
  return point(landmark.x + metresOf(spot.upMm), landmark.y + metresOf(spot.rightMm))
}

/**
 * The spot of a place: its nearest landmark and the offset, in whole millimetres. Distances are compared in whole
 * square millimetres and ties go to the landmark listed first, so the same place always gives the same spot.
 * `isKnown` leaves out landmarks that whoever asks has no word for.
 */
export function nearestSpot(
  space: Space,
  place: Point,
  choices?: FormatChoices,
  isKnown: (landmark: Landmark) => boolean = () => true,
): Spot {
  const measures = measuresOf(space, choices)
  let nearest: Spot | null = null
  let least = Number.POSITIVE_INFINITY
  for (const landmark of LANDMARKS) {
    const at = measuredLandmark(measures, landmark)
    if (at === null || !isKnown(landmark)) continue
    const upMm = millimetresOf(metres(place.x - at.x))
    const rightMm = millimetresOf(metres(place.y - at.y))
    const squared = upMm * upMm + rightMm * rightMm
    if (squared >= least) continue
    least = squared
    nearest = { landmark, upMm, rightMm }
  }
  assert(nearest !== null, 'every space contains the middle of its own end line')
  return nearest
}
