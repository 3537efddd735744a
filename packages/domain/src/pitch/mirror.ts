import { type Point, point } from '../geometry'
import { assert, millimetres } from '../quantities'
import { LANDMARKS, type Landmark, type Side, type Spot } from './spot'

export function mirrorSide(side: Side): Side {
  return side === 'left' ? 'right' : 'left'
}

/** The same place across the length of the pitch. */
export function mirrorPoint(place: Point): Point {
  return point(place.x, -place.y)
}

function isLandmark(name: string): name is Landmark {
  return (LANDMARKS as readonly string[]).includes(name)
}

/** The landmark across the pitch: the last word changes; one in the middle stays itself. */
export function mirrorLandmark(landmark: Landmark): Landmark {
  const mirrored = landmark.replace(/-(left|right)$/, (word) => (word === '-left' ? '-right' : '-left'))
  assert(isLandmark(mirrored), 'every landmark on one side has its twin on the other')
  return mirrored
}

export function mirrorSpot(spot: Spot): Spot {
  const rightMm = millimetres(spot.rightMm === 0 ? 0 : -spot.rightMm)
  return { landmark: mirrorLandmark(spot.landmark), upMm: spot.upMm, rightMm }
}
