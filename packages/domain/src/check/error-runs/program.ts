import type { FormatChoices } from '../../formats'
import type { Point } from '../../geometry'
import { actorOf, type PatternDocument, type Position, placeOf, type Run, receiverOf, type Step } from '../../pattern'
import type { Space, Spot } from '../../pitch'
import { metres, metresOf, millimetresOf, unreachable } from '../../quantities'
import { GRAVITY } from '../ball'
import { placerFor } from '../places'
import type { AgeProfile } from '../profiles'
import { BALL_DECELERATION, type Surface } from '../surfaces'
import type { TimedStep } from '../timed-step'
import { timelineOf } from '../timeline'
import type { ErrorProfile } from './error-profile'

/** What is the same in every run of a document. */
export type ProgramSetting = {
  readonly profile: AgeProfile
  readonly errors: ErrorProfile
  readonly surface: Surface
  readonly choices?: FormatChoices
}

/** How a step's ball goes. A ball let through by a dummy rolls on with what it has. */
export const ROLLS = 0
export const FLIES = 1
export const CARRIED = 2
export const ROLLS_ON = 3
export const SHOT = 4

/** What a run waits for: the ball of the step before, this one, its coming to whom it is meant for, or its end. */
export const BEFORE = 0
export const WITH = 1
export const WAITING = 2
export const AFTER = 3

export const NOBODY = -1

/**
 * A document on a space as flat arrays, one place a step, a run, a player or an opponent, so that ten thousand runs go over
 * plain numbers. Places are whole millimetres and times whole milliseconds, written in metres and seconds: what differs in
 * the last bit between engines is gone before the first decision.
 */
export type Program = {
  readonly stepIds: readonly string[]
  readonly steps: number
  readonly players: number
  readonly startX: Float64Array
  readonly startY: Float64Array
  readonly opponents: number
  readonly opponentX: Float64Array
  readonly opponentY: Float64Array
  readonly flight: Uint8Array
  readonly actor: Int32Array
  readonly receiver: Int32Array
  /** Whether the step names where the ball is met; else it is where the receiver's run ends. */
  readonly named: Uint8Array
  readonly goalX: Float64Array
  readonly goalY: Float64Array
  /** Whether the next step lets this ball through. */
  readonly letThrough: Uint8Array
  readonly arrivalSpeed: Float64Array
  readonly speedMax: Float64Array
  /** From the ball at the feet to this step's ball. */
  readonly handling: Float64Array
  readonly directionSpread: Float64Array
  readonly speedSpread: Float64Array
  /** Metres a first touch lets off per metre a second of the ball; zero where the ball is played as it comes. */
  readonly touchSpread: Float64Array
  readonly shotHalfWidth: Float64Array
  readonly runsFrom: Int32Array
  /** Which cues the runs of a step wait for: a bit each. */
  readonly cues: Uint8Array
  readonly runner: Int32Array
  readonly runCue: Uint8Array
  /** 1 for a run by the player who gives the cue: they need not react. */
  readonly runAtOnce: Uint8Array
  readonly runX: Float64Array
  readonly runY: Float64Array
  readonly legsMax: number
  readonly acceleration: number
  readonly topSpeed: number
  readonly carrySpeed: number
  readonly reaction: number
  readonly reactionShare: number
  readonly reach: number
  readonly deceleration: number
  readonly gravity: number
  /** A step and a leg. */
  readonly reachWithStep: number
  readonly chaseMax: number
  readonly spaceLength: number
  readonly spaceHalfWidth: number
  /** 1, or −1 for a document written for the left: its errors are those of its mirror, mirrored. */
  readonly side: number
}

/** The document must have passed `checkShape`, its spots and the space must be whole millimetres. */
export function compileProgram(document: PatternDocument, space: Space, setting: ProgramSetting): Program {
  const { profile, errors, surface, choices } = setting
  const placed = placerFor(document, space, choices)
  const place = (spot: Spot) => toMillimetre(placed(spot))
  const index = new Map(document.positions.map((each, at) => [each.position, at]))
  const playerOf = (position: Position | null) => (position === null ? NOBODY : (index.get(position) ?? NOBODY))
  const starts = document.positions.map((each) => place(each.spot))
  const opponents = document.obstacles.filter((each) => each.kind === 'opponent').map((each) => place(each.spot))
  const timed = timelineOf(document, space, profile, surface, choices).steps
  const runs = document.steps.flatMap((step) => step.runs)
  const { steps } = document
  return {
    stepIds: steps.map((step) => step.stepId),
    steps: steps.length,
    players: starts.length,
    startX: Float64Array.from(starts, (at) => at.x),
    startY: Float64Array.from(starts, (at) => at.y),
    opponents: opponents.length,
    opponentX: Float64Array.from(opponents, (at) => at.x),
    opponentY: Float64Array.from(opponents, (at) => at.y),
    actor: Int32Array.from(steps, (step) => playerOf(actorOf(step.action))),
    receiver: Int32Array.from(steps, (step) => playerOf(receiverOf(step.action))),
    ...ballArrays(document, timed, setting, place),
    ...runArrays(document, playerOf, place),
    legsMax: 4 + 3 * steps.length + runs.length,
    acceleration: profile.acceleration.value,
    topSpeed: profile.topSpeed.value,
    carrySpeed: profile.carrySpeed.value,
    reaction: profile.reaction.value,
    reactionShare: errors.reactionShare.value,
    reach: profile.reach.value,
    deceleration: BALL_DECELERATION[surface].value,
    gravity: GRAVITY,
    reachWithStep: errors.stepMetres.value + profile.reach.value,
    chaseMax: errors.chaseMetres.value,
    spaceLength: metresOf(space.lengthMm),
    spaceHalfWidth: metresOf(space.widthMm) / 2,
    side: document.writtenFor === 'left' ? -1 : 1,
  }
}

type Place = (spot: Spot) => Point
type PlayerOf = (position: Position | null) => number

function toMillimetre(at: Point): Point {
  return { x: metresOf(millimetresOf(at.x)), y: metresOf(millimetresOf(at.y)) }
}

function thousandths(value: number): number {
  return Math.round(value * 1000) / 1000
}

function ballArrays(document: PatternDocument, timed: readonly TimedStep[], setting: ProgramSetting, place: Place) {
  const { profile, errors } = setting
  const { steps } = document
  const flight = steps.map((step, at) => flightOf(step, at))
  const goals = steps.map((step) => goalOf(step, document, place))
  const isPlayedAsItComes = steps.map((step, at) => at > 0 && flight[at - 1] !== CARRIED && isOneTouch(step))
  const times = steps.map((step, at) => {
    if (isByHand(step)) return errors.handsTimes.value
    return isPlayedAsItComes[at] ? errors.oneTouchTimes.value : 1
  })
  const direction = (errors.directionDegrees.value * Math.PI) / 180
  const touched = (at: number) => needsTouch(steps[at + 1]) && flight[at] !== CARRIED
  const touch = errors.touchMetres.value / profile.arrivalSpeed.value
  return {
    flight: Uint8Array.from(flight),
    named: Uint8Array.from(goals, (goal) => (goal === null ? 0 : 1)),
    goalX: Float64Array.from(goals, (goal) => goal?.x ?? 0),
    goalY: Float64Array.from(goals, (goal) => goal?.y ?? 0),
    letThrough: Uint8Array.from(steps, (_, at) => (flight[at + 1] === ROLLS_ON ? 1 : 0)),
    arrivalSpeed: Float64Array.from(timed, plannedArrival),
    speedMax: Float64Array.from(steps, (step) => (isByHand(step) ? profile.throwSpeedMax : profile.kickSpeedMax).value),
    handling: Float64Array.from(timed, (step, at) => thousandths(step.startsAt - (timed[at - 1]?.receivedAt ?? 0))),
    directionSpread: Float64Array.from(times, (factor) => direction * factor),
    speedSpread: Float64Array.from(times, (factor) => errors.speedShare.value * factor),
    touchSpread: Float64Array.from(steps, (_, at) => (touched(at) ? touch : 0)),
    shotHalfWidth: Float64Array.from(steps, (step) => targetHalfWidth(step, document)),
  }
}

function flightOf({ action }: Step, at: number): number {
  switch (action.kind) {
    case 'pass':
      return action.height === 'air' ? FLIES : ROLLS
    case 'set-back':
    case 'roll':
      return ROLLS
    case 'throw':
      return FLIES
    case 'carry':
    case 'dribble-past':
      return CARRIED
    case 'dummy':
      return at === 0 ? ROLLS : ROLLS_ON
    case 'shot':
      return SHOT
    default:
      return unreachable(action)
  }
}

function isByHand({ action }: Step): boolean {
  return action.kind === 'throw' || action.kind === 'roll'
}

function isOneTouch({ action }: Step): boolean {
  return action.kind === 'set-back' || (action.kind === 'pass' && action.touches === 1)
}

/** Whether the ball has to be brought under control for what comes next; after the last step the pattern is over. */
function needsTouch(next: Step | undefined): boolean {
  return next !== undefined && !isOneTouch(next) && !isByHand(next) && next.action.kind !== 'dummy'
}

/** The speed the ball should still have where it is met, as the timeline has it planned. */
function plannedArrival({ flight, from, to }: TimedStep): number {
  if (flight.kind !== 'rolls') return 0
  const squared = (to.x - from.x) ** 2 + (to.y - from.y) ** 2
  const { releaseSpeed, deceleration } = flight.ball
  return thousandths(Math.sqrt(Math.max(0, releaseSpeed ** 2 - 2 * deceleration * Math.sqrt(squared))))
}

function goalOf({ action }: Step, document: PatternDocument, place: Place): Point | null {
  if (action.kind === 'shot') {
    const target = document.targets.find((each) => each.targetId === action.target)
    return target === undefined ? null : place(target.spot)
  }
  const spot = placeOf(action)
  return spot === null ? null : place(spot)
}

function targetHalfWidth({ action }: Step, document: PatternDocument): number {
  if (action.kind !== 'shot') return 0
  const target = document.targets.find((each) => each.targetId === action.target)
  return target === undefined ? 0 : metres(metresOf(target.widthMm) / 2)
}

function runArrays(document: PatternDocument, playerOf: PlayerOf, place: Place) {
  const runs = document.steps.flatMap((step) => step.runs.map((run) => ({ step, run })))
  const from = [0]
  for (const step of document.steps) from.push((from.at(-1) ?? 0) + step.runs.length)
  const ends = runs.map(({ run }) => place(run.to))
  return {
    runsFrom: Int32Array.from(from),
    cues: Uint8Array.from(document.steps, (step) => step.runs.reduce((bits, run) => bits | (1 << cueOf(step, run)), 0)),
    runner: Int32Array.from(runs, ({ run }) => playerOf(run.position)),
    runCue: Uint8Array.from(runs, ({ step, run }) => cueOf(step, run)),
    runAtOnce: Uint8Array.from(runs, ({ step, run }) => (run.position === actorOf(step.action) ? 1 : 0)),
    runX: Float64Array.from(ends, (end) => end.x),
    runY: Float64Array.from(ends, (end) => end.y),
  }
}

function cueOf({ action }: Step, run: Run): number {
  switch (run.start) {
    case 'before-the-ball':
      return BEFORE
    case 'with-the-ball':
      return WITH
    case 'after-the-ball': {
      const isMet = run.position === receiverOf(action) && 'into' in action && action.into.kind === 'space'
      return isMet ? WAITING : AFTER
    }
    default:
      return unreachable(run.start)
  }
}
