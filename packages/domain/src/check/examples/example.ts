import type { BallAction, Obstacle, PatternDocument, Position, Run, Step, Target } from '../../pattern'
import { samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import type { Spot } from '../../pitch'
import { millimetres } from '../../quantities'
import type { CheckOptions } from '../check-pattern'
import type { NoteCode } from '../note'

/** A note as a coach would point at it: what about, at which step, to whom. */
export type Said = readonly [code: NoteCode, stepId: string | null, position: Position | null]

/**
 * A small pattern with what a trained coach says of it, written down before it was checked; the argument stands in the
 * comment above each. Where the check says otherwise `checkSays` holds what it says and `because` why both may stand.
 */
export type Example = {
  readonly title: string
  readonly document: PatternDocument
  readonly options?: CheckOptions
  readonly coachSays: readonly Said[]
  readonly differs?: { readonly checkSays: readonly Said[]; readonly because: string }
}

/** A place in metres up the pitch from the middle of the own goal and to the right. A 7v7 pitch here is 54.9 m by 36.6 m. */
export function at(up: number, right: number): Spot {
  return spotAt('goal-centre', up, right)
}

type Places = Readonly<Record<string, Spot>>

/** A 2-3-1 that builds out, the goalkeeper at the top of the goal area. */
const BUILDING_OUT: Places = {
  GK: at(3.5, 0),
  LCB: at(10.9, -9),
  RCB: at(10.9, 9),
  LW: at(19.2, -16.8),
  CM: at(15.4, 0),
  RW: at(19.2, 16.8),
  ST: at(32.6, 0),
}

type Drawn = {
  readonly places?: Places
  readonly restart?: PatternDocument['restart']
  readonly obstacles?: readonly Obstacle[]
  readonly targets?: readonly Target[]
  readonly ageGroup?: string
}

/** A U10 pattern in 7v7 with these steps; whoever is not placed stands as for building out. */
export function drawn(steps: readonly Step[], more: Drawn = {}): PatternDocument {
  const places = { ...BUILDING_OUT, ...more.places }
  return {
    ...samplePattern,
    ageGroup: more.ageGroup ?? 'U10',
    positions: Object.entries(places).map(([position, spot]) => ({ position, spot })),
    obstacles: more.obstacles ?? [],
    targets: more.targets ?? [],
    restart: more.restart ?? 'goal-kick',
    steps,
    looks: [],
  }
}

export function step(stepId: string, action: BallAction, ...runs: readonly Run[]): Step {
  return { stepId, action, runs, point: '' }
}

type Pass = Extract<BallAction, { kind: 'pass' }>

/** Along the ground to feet in two touches unless said otherwise. */
export function pass(from: Position, to: Position, more: Partial<Pass> = {}): Pass {
  return { kind: 'pass', from, to, into: { kind: 'feet' }, height: 'ground', touches: 2, foot: 'either', ...more }
}

export function intoSpace(from: Position, to: Position, spot: Spot, more: Partial<Pass> = {}): Pass {
  return pass(from, to, { into: { kind: 'space', spot }, ...more })
}

export function setBack(from: Position, to: Position): BallAction {
  return { kind: 'set-back', from, to, into: { kind: 'feet' }, foot: 'either' }
}

export function byHand(kind: 'roll' | 'throw', from: Position, to: Position): BallAction {
  return { kind, from, to, into: { kind: 'feet' } }
}

export function carry(by: Position, to: Spot, whom: string | null = null): BallAction {
  return { kind: 'carry', by, to, at: whom }
}

export function run(position: Position, to: Spot, start: Run['start']): Run {
  return { position, to, start }
}

export function opponent(obstacleId: string, spot: Spot): Obstacle {
  return { obstacleId, kind: 'opponent', spot }
}

export function pole(obstacleId: string, spot: Spot): Obstacle {
  return { obstacleId, kind: 'pole', spot }
}

/** The goal at the far end of a 7v7 pitch. */
export const farGoal: Target = { targetId: 'goal', kind: 'goal', spot: at(54.864, 0), widthMm: millimetres(5639) }
