import { type FormatChoices, formatOf } from '@espalier/domain/formats'
import {
  actorOf,
  type BallAction,
  type PatternDocument,
  type Position,
  placeOf,
  receiverOf,
} from '@espalier/domain/pattern'
import { gateAt, isInside, placeSpots, type Space, type Spot } from '@espalier/domain/pitch'
import { metresOf, unreachable } from '@espalier/domain/quantities'
import { type PaperPoint, toPaper, toPitch } from './paper-point'
import type { TrailKind } from './trail'

/** A pattern laid out on a space: where everybody is before each step, and every way drawn. */
export type PatternScene = {
  /** Before step 0, before step 1 … and last after the end. */
  readonly places: readonly ReadonlyMap<Position, PaperPoint>[]
  readonly steps: readonly SceneStep[]
  readonly obstacles: readonly {
    readonly id: string
    readonly kind: PatternDocument['obstacles'][number]['kind']
    readonly at: PaperPoint
  }[]
  readonly targets: readonly SceneTarget[]
  /** Where this space ends before the pattern does: the ball goes out through a gate, and nothing after it is drawn. */
  readonly cut: { readonly stepIndex: number; readonly at: PaperPoint } | null
}

export type SceneTarget = {
  readonly id: string
  readonly kind: PatternDocument['targets'][number]['kind']
  readonly at: PaperPoint
  readonly width: number
}

export type SceneStep = {
  readonly stepId: string
  readonly number: number
  readonly actor: Position
  readonly receiver: Position | null
  /** Null where the space has no such landmark, so the way cannot be drawn. */
  readonly ball: { readonly kind: TrailKind; readonly from: PaperPoint; readonly to: PaperPoint } | null
  readonly runs: readonly { readonly position: Position; readonly from: PaperPoint; readonly to: PaperPoint }[]
}

/**
 * Lays a pattern out. Spots are placed as the check places them, so drawing and notes speak of the same metres. On a space
 * that ends before the pattern does, it is cut at a gate, as the plan cuts it.
 */
export function patternScene(document: PatternDocument, space: Space, choices?: FormatChoices): PatternScene {
  return cutToSpace(wholeScene(document, space, choices), space)
}

function wholeScene(document: PatternDocument, space: Space, choices?: FormatChoices): PatternScene {
  const place = placer(document, space, choices)
  const start = new Map<Position, PaperPoint>()
  for (const { position, spot } of document.positions) {
    const at = place(spot)
    if (at !== null) start.set(position, at)
  }
  const targets = document.targets.flatMap(({ targetId, kind, spot, widthMm }) => {
    const at = place(spot)
    return at === null ? [] : [{ id: targetId, kind, at, width: metresOf(widthMm) }]
  })
  const places: Map<Position, PaperPoint>[] = [start]
  const steps = document.steps.map((step, index): SceneStep => {
    const before = places[index] ?? start
    const after = new Map(before)
    const runs = step.runs.flatMap((run) => {
      const from = before.get(run.position)
      const to = place(run.to)
      if (from === undefined || to === null) return []
      after.set(run.position, to)
      return [{ position: run.position, from, to }]
    })
    const actor = actorOf(step.action)
    const receiver = receiverOf(step.action)
    const from = before.get(actor)
    const to = meetingPlace(step.action, before, after, targets, place, step.runs)
    if (receiver !== null && to !== null) after.set(receiver, to)
    places.push(after)
    const ball = from === undefined || to === null ? null : { kind: trailKind(step.action), from, to }
    return { stepId: step.stepId, number: index + 1, actor, receiver, ball, runs }
  })
  const obstacles = document.obstacles.flatMap(({ obstacleId, kind, spot }) => {
    const at = place(spot)
    return at === null ? [] : [{ id: obstacleId, kind, at }]
  })
  return { places, steps, obstacles, targets, cut: null }
}

function cutToSpace(scene: PatternScene, space: Space): PatternScene {
  const isShown = (place: PaperPoint) => isInside(space, toPitch(place))
  const exits = scene.steps.map(({ ball }) =>
    ball !== null && isShown(ball.from) ? gateAt(space, toPitch(ball.from), toPitch(ball.to)) : null,
  )
  const stepIndex = exits.findIndex((exit) => exit !== null)
  const exit = exits[stepIndex]
  const cut = exit === undefined || exit === null ? null : { stepIndex, at: toPaper(exit) }
  const steps = scene.steps.map((step, index): SceneStep => {
    if (cut !== null && index > cut.stepIndex) return { ...step, ball: null, runs: [] }
    const runs = step.runs.flatMap((run) => {
      if (!isShown(run.from)) return []
      const edge = gateAt(space, toPitch(run.from), toPitch(run.to))
      return [{ ...run, to: edge === null ? run.to : toPaper(edge) }]
    })
    const isLast = cut !== null && index === cut.stepIndex && step.ball !== null
    return { ...step, ball: isLast ? { ...step.ball, to: cut.at } : step.ball, runs }
  })
  return {
    ...scene,
    steps,
    cut,
    places: scene.places.map((places) => new Map([...places].filter(([, place]) => isShown(place)))),
    obstacles: scene.obstacles.filter((obstacle) => isShown(obstacle.at)),
    targets: scene.targets.filter((target) => isShown(target.at)),
  }
}

function placer(
  document: PatternDocument,
  space: Space,
  choices: FormatChoices | undefined,
): (spot: Spot) => PaperPoint | null {
  const format = formatOf(document.formatId, choices)
  const [first] = document.steps
  const starter = first === undefined ? undefined : actorOf(first.action)
  const ball = document.positions.find((placed) => placed.position === starter)?.spot
  return (spot) => {
    const point = placeSpots(space, format, [spot], ball, choices)[0]?.point ?? null
    return point === null ? null : toPaper(point)
  }
}

/** Where the ball goes: the place the action names, the target, or where the receiver is when it comes. */
function meetingPlace(
  action: BallAction,
  before: ReadonlyMap<Position, PaperPoint>,
  after: ReadonlyMap<Position, PaperPoint>,
  targets: readonly SceneTarget[],
  place: (spot: Spot) => PaperPoint | null,
  runs: PatternDocument['steps'][number]['runs'],
): PaperPoint | null {
  const named = placeOf(action)
  if (named !== null) return place(named)
  if (action.kind === 'shot') return targets.find((target) => target.id === action.target)?.at ?? null
  const receiver = receiverOf(action)
  if (receiver === null) return null
  // Who sets off only when the ball is there still stands at the old place when it comes.
  const runsLater = runs.some((run) => run.position === receiver && run.start === 'after-the-ball')
  return (runsLater ? before : after).get(receiver) ?? null
}

function trailKind(action: BallAction): TrailKind {
  switch (action.kind) {
    case 'pass':
      return action.height === 'air' ? 'air' : 'pass'
    case 'throw':
      return 'air'
    case 'set-back':
    case 'roll':
    case 'dummy':
      return 'pass'
    case 'carry':
    case 'dribble-past':
      return 'carry'
    case 'shot':
      return 'shot'
    default:
      return unreachable(action)
  }
}
