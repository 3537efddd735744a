import type { FormatChoices } from '../formats'
import type { Point } from '../geometry'
import { unreachable } from '../quantities'
import { landmarkPoint } from './landmark'
import { LANDMARK_PLACES, type LandmarkPlace } from './landmark-place'
import type { Finding, Marking, Space } from './space'
import { LANDMARKS, type Landmark } from './spot'

/** What shows a landmark on the ground: paint, flags (or cones left as such), or a goal that stands there. */
export type LandmarkFinding = Exclude<Finding, 'none'> | 'goal'

export type LandmarkFound = {
  readonly landmark: Landmark
  readonly point: Point
  readonly finding: LandmarkFinding
}

/**
 * The lines that together show a landmark; null where nothing ever shows it: the middle of a line is a point nobody
 * can see, however well the line is painted. On a plain space no line belongs to an area.
 */
function shownBy(place: LandmarkPlace, covers: Space['covers']): readonly Marking[] | null {
  const { depth, breadth } = place
  if (covers === 'plain' && depth !== 'goal-line' && depth !== 'halfway') return null
  switch (breadth) {
    case 'goal':
      return null
    case 'goal-area':
    case 'penalty-area':
      return covers === 'plain' ? null : [breadth]
    case 'touchline':
      return depth === 'halfway' || depth === 'build-out-line' ? [depth] : ['boundary']
    case 'axis':
      return shownOnAxis(depth)
    default:
      return unreachable(breadth)
  }
}

function shownOnAxis(depth: LandmarkPlace['depth']): readonly Marking[] | null {
  switch (depth) {
    case 'penalty-mark':
      return ['penalty-mark']
    case 'penalty-arc':
      return ['penalty-area', 'penalty-mark']
    case 'halfway':
      return ['centre-circle']
    case 'goal-line':
    case 'goal-area':
    case 'penalty-area':
    case 'build-out-line':
      return null
    default:
      return unreachable(depth)
  }
}

function findingOf(space: Space, landmark: Landmark): LandmarkFinding | null {
  const place = LANDMARK_PLACES[landmark]
  if (place.depth === 'goal-line' && (place.breadth === 'goal' || place.breadth === 'axis')) {
    return space.goals.some((goal) => goal.end === place.end) ? 'goal' : null
  }
  const lines = shownBy(place, space.covers)
  if (lines === null) return null
  const findings = lines.map((line) => space.markings[line])
  if (findings.includes('none')) return null
  // Flags cannot show a curve.
  if (place.depth === 'penalty-arc') return findings.includes('flags') ? null : 'painted'
  return findings.includes('flags') ? 'flags' : 'painted'
}

/** The landmarks a coach can find on this ground, in the order of the list: painted, flagged, or given by a goal. */
export function landmarksFound(space: Space, choices?: FormatChoices): readonly LandmarkFound[] {
  const found: LandmarkFound[] = []
  for (const landmark of LANDMARKS) {
    const finding = findingOf(space, landmark)
    const point = landmarkPoint(space, landmark, choices)
    if (finding !== null && point !== null) found.push({ landmark, point, finding })
  }
  return found
}
