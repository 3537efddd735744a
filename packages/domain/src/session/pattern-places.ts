import { type FormatChoices, formatOf } from '../formats'
import { type Point, point } from '../geometry'
import { actorOf, mirrorPattern, type PatternDocument, type Position, type Step } from '../pattern'
import { gateAt, placeSpots, type Side, type Space, type Spot } from '../pitch'
import { type Millimetres, metres, millimetres, millimetresOf } from '../quantities'
import type { Area } from './plan'

/** A place on tonight's space in whole millimetres. */
export type Place = { readonly upMm: Millimetres; readonly rightMm: Millimetres }

export type PatternPlaces = {
  readonly starts: readonly (Place & { readonly position: Position })[]
  readonly obstacles: readonly (Place & { readonly kind: PatternDocument['obstacles'][number]['kind'] })[]
  readonly targets: readonly (Place & {
    readonly kind: PatternDocument['targets'][number]['kind']
    readonly widthMm: Millimetres
  })[]
  /** Where players run and balls go: they make the area larger, and need nothing set out. */
  readonly ways: readonly Place[]
  /** Starts and targets outside the space: the pattern ends before them, at a gate on the edge. */
  readonly cut: readonly { readonly name: string; readonly gate: Place }[]
}

export function placeAt(at: Point): Place {
  return { upMm: millimetresOf(at.x), rightMm: millimetresOf(at.y) }
}

/** A pattern's places on tonight's space for one side. What lies outside is cut, never shrunk into it. */
export function patternPlaces(
  document: PatternDocument,
  side: Side,
  space: Space,
  choices?: FormatChoices,
): PatternPlaces {
  const sided = side === document.writtenFor ? document : mirrorPattern(document)
  const put = placer(sided, space, choices)
  const starts = sided.positions.map((placed) => ({ position: placed.position, at: put(placed.spot) }))
  const within = <Item>(items: readonly Item[], spotOf: (item: Item) => Spot) =>
    items.flatMap((item) => {
      const placed = put(spotOf(item))
      return placed?.inside ? [{ item, place: placeAt(placed.point) }] : []
    })
  return {
    starts: starts.flatMap(({ position, at }) => (at?.inside ? [{ position, ...placeAt(at.point) }] : [])),
    cut: [
      ...starts.map(({ position, at }) => ({ name: position, at })),
      ...sided.targets.map((target) => ({ name: 'the target', at: put(target.spot) })),
    ].flatMap(({ name, at }) => (at && !at.inside ? [{ name, gate: gateOf(space, at.point) }] : [])),
    obstacles: within(sided.obstacles, (each) => each.spot).map(({ item, place }) => ({ kind: item.kind, ...place })),
    targets: within(sided.targets, (each) => each.spot).map(({ item, place }) => {
      return { kind: item.kind, widthMm: item.widthMm, ...place }
    }),
    ways: within(sided.steps.flatMap(spotsOf), (spot) => spot).map(({ place }) => place),
  }
}

type PutPlace = { readonly point: Point; readonly inside: boolean }

/** Puts spots on the space, the ball lying with whoever plays it first; null for a landmark the pattern's format does not have. */
function placer(document: PatternDocument, space: Space, choices?: FormatChoices): (spot: Spot) => PutPlace | null {
  const first = document.steps[0]?.action
  const ball = document.positions.find((placed) => first && placed.position === actorOf(first))?.spot
  return (spot) => {
    const [placed] = placeSpots(space, formatOf(document.formatId, choices), [spot], ball)
    return placed?.point ? { point: placed.point, inside: placed.lies === 'inside' } : null
  }
}

function gateOf(space: Space, outside: Point): Place {
  return placeAt(gateAt(space, point(metres(0), metres(0)), outside) ?? outside)
}

function spotsOf(step: Step): readonly Spot[] {
  const runs = step.runs.map((run) => run.to)
  const { action } = step
  switch (action.kind) {
    case 'carry':
    case 'dribble-past':
      return [action.to, ...runs]
    case 'pass':
    case 'set-back':
    case 'throw':
    case 'roll':
      return action.into.kind === 'space' ? [action.into.spot, ...runs] : runs
    case 'dummy':
    case 'shot':
      return runs
  }
}

/** Room round the outermost place of a pattern. Common practice, no source. */
const MARGIN_MM = 2000

/** The rectangle round all places with a margin, inside the space; edges on even millimetres so that its middle is whole. */
export function areaRound(places: readonly Place[], space: Space): Area {
  const ups = places.map((place) => place.upMm)
  const rights = places.map((place) => place.rightMm)
  const half = evenBelow(Math.floor(space.widthMm / 2))
  const nearMm = Math.max(0, evenBelow(Math.min(...ups) - MARGIN_MM))
  const farMm = Math.min(evenBelow(space.lengthMm), evenBelow(Math.max(...ups) + MARGIN_MM))
  const leftMm = Math.max(-half, evenBelow(Math.min(...rights) - MARGIN_MM))
  const rightMm = Math.min(half, evenBelow(Math.max(...rights) + MARGIN_MM))
  return areaBetween(nearMm, farMm, leftMm, rightMm)
}

export function areaBetween(nearMm: number, farMm: number, leftMm: number, rightMm: number): Area {
  return {
    upMm: millimetres((nearMm + farMm) / 2),
    rightMm: millimetres((leftMm + rightMm) / 2),
    lengthMm: millimetres(farMm - nearMm),
    widthMm: millimetres(rightMm - leftMm),
  }
}

function evenBelow(lengthMm: number): number {
  return Math.floor(lengthMm / 2) * 2
}
