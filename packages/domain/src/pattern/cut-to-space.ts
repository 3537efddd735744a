import { type FormatChoices, formatOf } from '../formats'
import { nearestInside, type Point, point, type Rectangle, rectangle } from '../geometry'
import { gateAt, isInside, placeSpots, type Space, type Spot, spaceRectangle } from '../pitch'
import { assert, millimetres, millimetresOf } from '../quantities'
import { actorOf } from './actions'
import type { PatternDocument, Position } from './document'
import { type EndedAtGates, endAtGates } from './end-at-gates'
import { listSpots } from './landmark-rules'

export type CutToSpace = EndedAtGates & {
  /** Whose starting places lie outside, in the order of the pattern. */
  readonly outside: readonly Position[]
}

/**
 * A pattern as far as it fits on a space, with a gate at the edge where the ball would leave it. Nothing is shrunk to fit:
 * near the ball places keep their metres, far places their landmark, as the set-out puts them. The goal's middle is the end
 * of every way that starts nowhere else. Null where the ball itself would start outside.
 * The document must have passed `checkShape`; what comes out passes it too.
 */
export function cutToSpace(document: PatternDocument, space: Space, choices?: FormatChoices): CutToSpace | null {
  const first = document.steps[0]
  const starter = first === undefined ? undefined : actorOf(first.action)
  const ball = document.positions.find((each) => each.position === starter)?.spot
  const format = formatOf(document.formatId, choices)
  const pointOf = (spot: Spot): Point => {
    const [placed] = placeSpots(space, format, [spot], ball, choices)
    assert(placed?.point, `the format ${document.formatId} has ${spot.landmark}`)
    return placed.point
  }
  const points = new Map(listSpots(document).map(({ spot }): [Spot, Point] => [spot, pointOf(spot)]))
  const placeOf = (spot: Spot) => points.get(spot) ?? pointOf(spot)
  const isIn = (spot: Spot) => isInside(space, placeOf(spot))
  if (ball !== undefined && !isIn(ball)) return null
  const outside = document.positions.filter(({ spot }) => !isIn(spot)).map((each) => each.position)
  const edge = (spot: Spot) => edgeSpot(space, ball, placeOf(spot), placeOf)
  return { ...endAtGates(document, { isHere: (each) => !outside.includes(each), isIn, gateFor: edge }), outside }
}

const GOAL: Spot = { landmark: 'goal-centre', upMm: millimetres(0), rightMm: millimetres(0) }

/**
 * The spot of the place where a way from the ball crosses the edge; a place inside keeps its own. Told from the landmark the
 * ball lies at, it comes to lie there whether or not it counts as near the ball.
 */
function edgeSpot(space: Space, ball: Spot | undefined, place: Point, placeOf: (spot: Spot) => Point): Spot {
  const from = ball ?? GOAL
  const start = placeOf(from)
  const crossing = gateAt(space, isInside(space, start) ? start : point(0, 0), place) ?? place
  const at = nearestInside(shrunk(spaceRectangle(space)), crossing)
  return {
    landmark: from.landmark,
    upMm: millimetres(from.upMm + millimetresOf(at.x) - millimetresOf(start.x)),
    rightMm: millimetres(from.rightMm + millimetresOf(at.y) - millimetresOf(start.y)),
  }
}

/** A hand's breadth less than the space (habit of the project): sums of whole millimetres must not put a gate over the line. */
function shrunk(area: Rectangle): Rectangle {
  const by = Math.min(0.1, (area.far - area.near) / 4, (area.right - area.left) / 4)
  return rectangle(area.near + by, area.far - by, area.left + by, area.right - by)
}
