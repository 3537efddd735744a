import type { Position } from '@espalier/domain/pattern'
import { type Shaft, shaftBetween } from './arrow'
import { LEAVING_GAP, type MarkSizes, REACHING_GAP } from './mark-sizes'
import { gapBetween, type PaperPoint } from './paper-point'
import type { PatternScene, SceneStep } from './pattern-scene'
import type { TrailKind } from './trail'

export type Ring = {
  readonly position: Position
  readonly at: PaperPoint
  readonly state: 'standing' | 'acting' | 'ghost'
}

export type StepShafts = {
  readonly step: SceneStep
  readonly ball: { readonly kind: TrailKind; readonly shaft: Shaft } | null
  readonly runs: readonly Shaft[]
}

/** A place counts as at a ring when it is this near its middle, in metres. */
const AT_RING = 0.6

/** How far a ball in the air is bowed, as a share of its length. */
const AIR_BOW = 0.09

/**
 * One solid ring for everybody, where they stand before the step being read (or before the first), and a thin one where
 * a later ball is met somewhere else.
 */
export function patternRings(scene: PatternScene, reading: number | null, sizes: MarkSizes): readonly Ring[] {
  const places = scene.places[reading ?? 0] ?? new Map<Position, PaperPoint>()
  const current = reading === null ? undefined : scene.steps[reading]
  const acting = new Set(current === undefined ? [] : [current.actor, ...current.runs.map((run) => run.position)])
  const solid = [...places].map(
    ([position, at]): Ring => ({ position, at, state: acting.has(position) ? 'acting' : 'standing' }),
  )
  const ghosts: Ring[] = []
  for (const step of scene.steps.slice(reading ?? 0)) {
    const isAtGate = scene.cut !== null && scene.steps[scene.cut.stepIndex] === step
    if (step.receiver === null || step.receiver === step.actor || step.ball === null || isAtGate) continue
    const ghost: Ring = { position: step.receiver, at: step.ball.to, state: 'ghost' }
    const isTaken = [...solid, ...ghosts].some((ring) => gapBetween(ring.at, ghost.at) < sizes.ringRadius)
    if (!isTaken) ghosts.push(ghost)
  }
  // Thin rings lie under solid ones where the two are near.
  return [...ghosts, ...solid]
}

/** Every way of every step, kept clear of the rings it leaves and reaches. */
export function patternShafts(scene: PatternScene, rings: readonly Ring[], sizes: MarkSizes): readonly StepShafts[] {
  const reachOf = (at: PaperPoint) =>
    rings.some((ring) => gapBetween(ring.at, at) < AT_RING * sizes.unit) ? sizes.ringRadius : 0
  const between = (from: PaperPoint, to: PaperPoint, bow = 0) =>
    shaftBetween(from, to, reachOf(from) + LEAVING_GAP * sizes.unit, reachOf(to) + REACHING_GAP * sizes.unit, bow)
  return scene.steps.map((step) => ({
    step,
    ball:
      step.ball === null
        ? null
        : {
            kind: step.ball.kind,
            shaft: between(step.ball.from, step.ball.to, step.ball.kind === 'air' ? AIR_BOW : 0),
          },
    runs: step.runs.map((run) => between(run.from, run.to)),
  }))
}
