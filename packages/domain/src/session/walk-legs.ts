import { type Millimetres, millimetres } from '../quantities'
import type { Place } from './pattern-places'
import type { WalkLeg, WalkLine } from './plan'
import type { SeenLandmark, WalkGround } from './walk-ground'

/** Quarter turns clockwise from looking up the pitch. */
export type Heading = 0 | 1 | 2 | 3

/**
 * Where the walker stands by the paces walked, not where the tape would say: errors of rounding do not add up from stop
 * to stop, because the next leg is counted from here.
 */
export type Walker = Place & { readonly heading: Heading; readonly from: SeenLandmark['landmark'] | 'bag' }

export type Walked = { readonly walker: Walker; readonly legs: readonly WalkLeg[] }

/** A leg longer than this gets a bib at its middle: over it a count of paces drifts. Common practice, no source. */
export const LONG_LEG_PACES = 15

const TURNS = ['straight', 'right', 'back', 'left'] as const

type Axis = 'up' | 'across'

/**
 * Legs along the pitch and across it from where the walker stands to a place, in whole paces. On each leg the last landmark
 * within half a pace of the way is walked to exactly and counted from anew. Ends within half a pace of the place, up and across.
 */
export function walkTo(walker: Walker, target: Place, paceMm: Millimetres, ground: WalkGround): Walked {
  const upFirst = walkAxes(walker, ['up', 'across'], target, paceMm, ground)
  const acrossFirst = walkAxes(walker, ['across', 'up'], target, paceMm, ground)
  return score(acrossFirst) < score(upFirst) ? acrossFirst : upFirst
}

/** Fewer legs and smaller turns are easier to follow; a landmark on the way is worth a leg. */
function score(walked: Walked): number {
  return walked.legs.reduce((sum, leg) => sum + 3 + TURN_COST[leg.turn] - (leg.to === null ? 0 : 4), 0)
}

const TURN_COST = { straight: 0, left: 1, right: 1, back: 2 } as const satisfies Record<WalkLeg['turn'], number>

function walkAxes(
  start: Walker,
  axes: readonly Axis[],
  target: Place,
  paceMm: Millimetres,
  ground: WalkGround,
): Walked {
  let walker = start
  const legs: WalkLeg[] = []
  const walk = (axis: Axis, toMm: number, landmark: SeenLandmark | null) => {
    const walked = walkLeg(walker, axis, toMm, paceMm, ground, landmark)
    legs.push(walked.leg)
    walker = walked.walker
  }
  axes.forEach((axis, index) => {
    const landmark = landmarkOnWay(walker, axis, target, paceMm, ground, index === axes.length - 1)
    if (landmark) walk(axis, along(axis, landmark), landmark)
    const toGo = along(axis, target) - along(axis, walker)
    if (Math.round(Math.abs(toGo) / paceMm) > 0) walk(axis, along(axis, target), null)
  })
  return { walker, legs }
}

/** The landmark nearest the end of the way along one axis; on the last leg only one that does not lead past the place. */
function landmarkOnWay(
  walker: Walker,
  axis: Axis,
  target: Place,
  paceMm: Millimetres,
  ground: WalkGround,
  isLast: boolean,
): SeenLandmark | null {
  const from = along(axis, walker)
  const to = along(axis, target)
  const nearBy = (a: number, b: number) => Math.abs(a - b) * 2 <= paceMm
  let best: SeenLandmark | null = null
  for (const landmark of ground.landmarks) {
    const at = along(axis, landmark)
    const gone = (at - from) * Math.sign(to - from)
    const isOnWay = Math.round(gone / paceMm) >= 1 && gone <= Math.abs(to - from) + Math.floor(paceMm / 2)
    if (!isOnWay || !nearBy(beside(axis, landmark), beside(axis, walker))) continue
    if (isLast && !nearBy(beside(axis, landmark), beside(axis, target))) continue
    if (best === null || Math.abs(at - to) < Math.abs(along(axis, best) - to)) best = landmark
  }
  return best
}

function walkLeg(
  walker: Walker,
  axis: Axis,
  toMm: number,
  paceMm: Millimetres,
  ground: WalkGround,
  landmark: SeenLandmark | null,
): { readonly leg: WalkLeg; readonly walker: Walker } {
  const way = toMm - along(axis, walker)
  const heading = headingOf(axis, way)
  const paces = Math.round(Math.abs(way) / paceMm)
  const { upMm, rightMm } = landmark ?? moved(walker, axis, Math.sign(way) * paces * paceMm)
  const leg: WalkLeg = {
    turn: TURNS[(heading - walker.heading + 4) % 4] ?? 'straight',
    paces,
    lengthMm: millimetres(Math.abs(way)),
    to: landmark?.landmark ?? null,
    along: lineUnder(walker, axis, toMm, paceMm, ground),
    upMm,
    rightMm,
    bibAfterPaces: paces > LONG_LEG_PACES ? Math.floor(paces / 2) : null,
  }
  return { leg, walker: { upMm, rightMm, heading, from: landmark?.landmark ?? walker.from } }
}

/** The line a leg follows: within half a pace of it, and over its whole length. */
function lineUnder(walker: Walker, axis: Axis, toMm: number, paceMm: Millimetres, ground: WalkGround): WalkLine | null {
  const low = Math.min(along(axis, walker), toMm)
  const high = Math.max(along(axis, walker), toMm)
  const found = ground.lines.find(
    (line) =>
      line.runs === axis &&
      Math.abs(line.atMm - beside(axis, walker)) * 2 <= paceMm &&
      line.fromMm - paceMm <= low &&
      high <= line.toMm + paceMm,
  )
  return found?.line ?? null
}

function headingOf(axis: Axis, way: number): Heading {
  if (axis === 'up') return way >= 0 ? 0 : 2
  return way >= 0 ? 1 : 3
}

function along(axis: Axis, place: Place): number {
  return axis === 'up' ? place.upMm : place.rightMm
}

function beside(axis: Axis, place: Place): number {
  return axis === 'up' ? place.rightMm : place.upMm
}

function moved(place: Place, axis: Axis, byMm: number): Place {
  return axis === 'up'
    ? { upMm: millimetres(place.upMm + byMm), rightMm: place.rightMm }
    : { upMm: place.upMm, rightMm: millimetres(place.rightMm + byMm) }
}

/**
 * Walks the legs of one stop again, as a coach would: turn, count paces, and where a leg ends at a landmark stand on it. Uses
 * nothing of a leg but what the coach is told, so it proves that the words lead there.
 */
export function replayLegs(
  start: Pick<Walker, 'upMm' | 'rightMm' | 'heading'>,
  legs: readonly WalkLeg[],
  paceMm: Millimetres,
  ground: WalkGround,
): { readonly ends: readonly Place[]; readonly heading: Heading } {
  let at: Place = start
  let heading = start.heading
  const ends: Place[] = []
  for (const leg of legs) {
    heading = ((heading + TURNS.indexOf(leg.turn)) % 4) as Heading
    const length = leg.paces * paceMm * (heading === 0 || heading === 1 ? 1 : -1)
    const landmark = ground.landmarks.find((seen) => seen.landmark === leg.to)
    at = landmark ?? moved(at, heading % 2 === 0 ? 'up' : 'across', length)
    ends.push({ upMm: at.upMm, rightMm: at.rightMm })
  }
  return { ends, heading }
}
