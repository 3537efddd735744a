import type { FormatChoices } from '../formats'
import { containsRectangle, cornersOf, type Point, point, type Rectangle, rectangle } from '../geometry'
import { type Metres, metres, metresOf } from '../quantities'
import { clipCircle, clipSegment } from './clip'
import { isInside } from './landmark'
import { breadthDistance, depthDistance, halfwayDistance, type Measures, measuresOf, spaceRectangle } from './measures'
import type { MarkingClass, PitchMarking } from './pitch-marking'
import type { Finding, Space } from './space'

type End = 'own' | 'far'

/** The edge of the space, then what is on its ground: the format's lines that are painted or flagged, and the goals. */
export function pitchMarkings(space: Space, choices?: FormatChoices): readonly PitchMarking[] {
  const measures = measuresOf(space, choices)
  const edge: PitchMarking = {
    kind: 'rect',
    marking: 'boundary',
    finding: space.markings.boundary,
    area: spaceRectangle(space),
  }
  const ends: readonly End[] = space.covers === 'whole' ? ['own', 'far'] : space.covers === 'half' ? ['own'] : []
  return [
    edge,
    ...ends.flatMap((end) => [
      ...areaMarkings(measures, 'goal-area', end),
      ...areaMarkings(measures, 'penalty-area', end),
      ...markMarkings(measures, end),
      ...buildOutMarkings(measures, end),
      ...cornerMarkings(measures, end),
    ]),
    ...halfwayMarkings(measures),
    ...goalMarkings(measures),
  ]
}

/** A distance from one end's goal line, as a place up the pitch. */
function upFrom(space: Space, end: End, depth: number): number {
  return end === 'own' ? depth : metresOf(space.lengthMm) - depth
}

function areaMarkings(measures: Measures, marking: 'goal-area' | 'penalty-area', end: End): readonly PitchMarking[] {
  const { space } = measures
  const finding = space.markings[marking]
  const area = areaOfEnd(measures, marking, end)
  if (finding === 'none' || area === null) return []
  const edge = spaceRectangle(space)
  if (containsRectangle(edge, area)) return [{ kind: 'rect', marking, finding, area }]
  // An area that does not fit is drawn as far as the space goes, without its goal line, which the edge shows.
  const [nearLeft, nearRight, farRight, farLeft] = cornersOf(area)
  const top = end === 'own' ? { from: farLeft, to: farRight } : { from: nearLeft, to: nearRight }
  return [top, { from: nearLeft, to: farLeft }, { from: nearRight, to: farRight }].flatMap((side) => {
    const inside = clipSegment(side, edge)
    return inside === null ? [] : [{ kind: 'line' as const, marking, finding, ...inside }]
  })
}

function areaOfEnd(measures: Measures, marking: 'goal-area' | 'penalty-area', end: End): Rectangle | null {
  const depth = depthDistance(measures, marking)
  const breadth = breadthDistance(measures, marking, end)
  if (depth === null || breadth === null) return null
  const line = upFrom(measures.space, end, 0)
  const top = upFrom(measures.space, end, depth)
  return rectangle(Math.min(line, top), Math.max(line, top), -breadth, breadth)
}

/** The penalty mark and the arc round it, of which only the part outside the penalty area is a line. */
function markMarkings(measures: Measures, end: End): readonly PitchMarking[] {
  const { space, format } = measures
  const finding = space.markings['penalty-mark']
  const depth = depthDistance(measures, 'penalty-mark')
  if (finding === 'none' || depth === null) return []
  const at = point(upFrom(space, end, depth), 0)
  const dot: readonly PitchMarking[] = isInside(space, at)
    ? [{ kind: 'dot', marking: 'penalty-mark', finding, at }]
    : []
  const top = depthDistance(measures, 'penalty-area')
  const isPainted = finding === 'painted' && space.markings['penalty-area'] === 'painted'
  if (!isPainted || top === null || format.circleRadiusMm === null) return dot
  const radius = metresOf(format.circleRadiusMm.value)
  const width = metresOf(space.widthMm) / 2 + radius
  const topLine = upFrom(space, end, top)
  const beyond =
    end === 'own'
      ? rectangle(topLine, topLine + 2 * radius, -width, width)
      : rectangle(topLine - 2 * radius, topLine, -width, width)
  return [...dot, ...arcs('penalty-arc', finding, at, radius, [spaceRectangle(space), beyond])]
}

function buildOutMarkings(measures: Measures, end: End): readonly PitchMarking[] {
  const finding = measures.space.markings['build-out-line']
  const depth = depthDistance(measures, 'build-out-line')
  if (finding === 'none' || depth === null) return []
  return [across(measures.space, 'build-out-line', finding, upFrom(measures.space, end, depth))]
}

function cornerMarkings({ space, format }: Measures, end: End): readonly PitchMarking[] {
  if (space.markings.boundary !== 'painted' || format.cornerArcRadiusMm === null) return []
  const radius = metresOf(format.cornerArcRadiusMm.value)
  const halfWidth = metresOf(space.widthMm) / 2
  return [-halfWidth, halfWidth].flatMap((right) =>
    arcs('corner-arc', 'painted', point(upFrom(space, end, 0), right), radius, [spaceRectangle(space)]),
  )
}

/** A half ends at the halfway line, so its edge is that line. */
function halfwayMarkings({ space, format }: Measures): readonly PitchMarking[] {
  const up = halfwayDistance(space)
  const { halfway } = space.markings
  const line = halfway === 'none' || space.covers === 'half' ? [] : [across(space, 'halfway', halfway, up)]
  const finding = space.markings['centre-circle']
  if (finding === 'none' || space.covers === 'plain' || format.circleRadiusMm === null) return line
  const centre = point(up, 0)
  const radius = metresOf(format.circleRadiusMm.value)
  return [
    ...line,
    { kind: 'dot', marking: 'centre-mark', finding, at: centre },
    ...arcs('centre-circle', finding, centre, radius, [spaceRectangle(space)]),
  ]
}

/** Every goal found stands in the middle of its end of the space, also one carried to the halfway line. */
function goalMarkings(measures: Measures): readonly PitchMarking[] {
  const { space } = measures
  return space.goals.map((goal) => {
    const up = upFrom(space, goal.end, 0)
    const half = Math.min(goal.widthMm, space.widthMm) / 2000
    const posts = { left: point(up, -half), right: point(up, half) }
    return { kind: 'goal', marking: 'goal', finding: 'painted', end: goal.end, ...posts, movable: goal.movable }
  })
}

function across(space: Space, marking: MarkingClass, finding: Finding, up: number): PitchMarking {
  const halfWidth = metresOf(space.widthMm) / 2
  return { kind: 'line', marking, finding, from: point(up, -halfWidth), to: point(up, halfWidth) }
}

/** What some rectangles leave of a circle. */
function arcs(
  marking: MarkingClass,
  finding: Finding,
  centre: Point,
  radius: Metres,
  areas: readonly Rectangle[],
): readonly PitchMarking[] {
  return clipCircle(centre, radius, areas).map((turn) =>
    turn.toDegrees - turn.fromDegrees === 360
      ? { kind: 'circle', marking, finding, centre, radius: metres(radius) }
      : { kind: 'arc', marking, finding, centre, radius: metres(radius), ...turn },
  )
}
