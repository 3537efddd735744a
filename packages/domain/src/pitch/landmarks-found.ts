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
 * can see, however well the line is painted.
 */
function shownBy(place: LandmarkPlace, covers: Space['covers']): readonly Marking[] | null {
  const { depth, breadth } = place
  // A plain rectangle has an edge and may have a line across its middle; any other line on it belongs to no pitch.
  if (covers === 'plain' && breadth !== 'touchline') return null
  if (covers === 'plain' && depth === 'build-out-line') return null
  switch (breadth) {
    case 'goal':
      return null
    case 'goal-area':
    case 'penalty-area':
      return [breadth]
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
  if (!findings.includes('flags')) return 'painted'
  return canBeFlagged(place) ? 'flags' : null
}

/** Flags stand at corners, ends of lines and the penalty mark; they show no curve, no middle, no foot of an area's line. */
function canBeFlagged({ depth, breadth }: LandmarkPlace): boolean {
  if (breadth === 'axis') return depth === 'penalty-mark'
  return depth !== 'goal-line' || breadth === 'touchline'
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
