import { between, containsPoint, nearestInside, type Point, point, type Rectangle, type Segment } from '../geometry'

const SLACK = 1e-9

/** A place within a turn that, unlike its middle, is no point of symmetry where another edge may touch. */
const OFF_THE_MIDDLE = 0.381_966

/** The part of a segment inside a rectangle, edges included; null where there is none. */
export function clipSegment(segment: Segment, area: Rectangle): Segment | null {
  const dx = segment.to.x - segment.from.x
  const dy = segment.to.y - segment.from.y
  let enter = 0
  let leave = 1
  // Each edge keeps the share of the segment on its inner side: move · share ≤ room.
  const edges = [
    { move: -dx, room: segment.from.x - area.near },
    { move: dx, room: area.far - segment.from.x },
    { move: -dy, room: segment.from.y - area.left },
    { move: dy, room: area.right - segment.from.y },
  ]
  for (const { move, room } of edges) {
    if (move === 0 && room < -SLACK) return null
    if (move < 0) enter = Math.max(enter, room / move)
    if (move > 0) leave = Math.min(leave, room / move)
  }
  if (enter > leave) return null
  // Rounding must not carry an end past the edge that cut it.
  const at = (share: number) => nearestInside(area, between(segment.from, segment.to, share))
  return { from: enter === 0 ? segment.from : at(enter), to: leave === 1 ? segment.to : at(leave) }
}

/** Angles in degrees from straight up the pitch, growing to the right. */
export type Turn = { readonly fromDegrees: number; readonly toDegrees: number }

export function pointOnCircle(centre: Point, radius: number, degrees: number): Point {
  const radians = (degrees * Math.PI) / 180
  return point(centre.x + radius * Math.cos(radians), centre.y + radius * Math.sin(radians))
}

/** The angles, between 0 and 360, at which a circle meets one line along an axis, `offset` from its centre. */
function meetings(offset: number, radius: number, axis: 'x' | 'y'): readonly number[] {
  if (Math.abs(offset) >= radius) return []
  const angle = (Math.acos(offset / radius) * 180) / Math.PI
  return axis === 'x' ? [angle, 360 - angle] : [(90 - angle + 360) % 360, (90 + angle) % 360]
}

/** The parts of a circle inside every one of some rectangles; the whole circle comes back as one turn of 360 degrees. */
export function clipCircle(centre: Point, radius: number, areas: readonly Rectangle[]): readonly Turn[] {
  const cuts = areas.flatMap((area) => [
    ...meetings(area.near - centre.x, radius, 'x'),
    ...meetings(area.far - centre.x, radius, 'x'),
    ...meetings(area.left - centre.y, radius, 'y'),
    ...meetings(area.right - centre.y, radius, 'y'),
  ])
  const sorted = [...new Set(cuts)].sort((a, b) => a - b)
  const first = sorted[0]
  const isKept = (degrees: number) =>
    areas.every((area) => containsPoint(area, pointOnCircle(centre, radius, degrees), SLACK))
  // An edge that only touches the circle does so at a quarter turn: there every circle would seem to be inside.
  if (first === undefined) return isKept(45) ? [{ fromDegrees: 0, toDegrees: 360 }] : []
  const turns = sorted
    .map((fromDegrees, index) => ({ fromDegrees, toDegrees: sorted[index + 1] ?? first + 360 }))
    .filter(({ fromDegrees, toDegrees }) => isKept(fromDegrees + OFF_THE_MIDDLE * (toDegrees - fromDegrees)))
  return joinTurns(turns)
}

/** Turns in growing order, with neighbours that touch made one, also across the start of the circle. */
function joinTurns(turns: readonly Turn[]): readonly Turn[] {
  const joined: Turn[] = []
  for (const turn of turns) {
    const last = joined.at(-1)
    if (last?.toDegrees === turn.fromDegrees) {
      joined[joined.length - 1] = { fromDegrees: last.fromDegrees, toDegrees: turn.toDegrees }
    } else joined.push(turn)
  }
  const first = joined[0]
  const last = joined.at(-1)
  if (first === undefined || last === undefined || joined.length === 1) return joined
  if (last.toDegrees !== first.fromDegrees + 360) return joined
  return [...joined.slice(1, -1), { fromDegrees: last.fromDegrees, toDegrees: first.toDegrees + 360 }]
}
