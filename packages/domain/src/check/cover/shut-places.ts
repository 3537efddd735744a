import { distance, distanceToSegment, type Point } from '../../geometry'
import { type Milliseconds, millimetresOf, millisecondsOf } from '../../quantities'
import { type RollingBall, stopDistance } from '../ball'
import type { CheckLimits } from '../limits'
import { opponentMargin } from '../notes/lane-closed'
import type { AgeProfile } from '../profiles'
import type { TimedStep } from '../timed-step'

export type ShutModel = { readonly opponents: AgeProfile; readonly limits: CheckLimits }

/**
 * From where an X at rest shuts this ball: where their margin, in whole milliseconds as the notes say it, is below the limit.
 * A carry has no ball to be first at: see `isInCarry`.
 */
export function shutsFrom(step: TimedStep, model: ShutModel): (at: Point) => boolean {
  switch (step.flight.kind) {
    case 'rolls':
      return shutsRolling(step, step.flight.ball, model)
    case 'flies':
      return (at) => isShutExactly(step, at, model)
    case 'carried':
      return (at) => isInCarry(step, at, model)
  }
}

/**
 * A player with the ball at the feet is slower than any X, so a margin in time would shut every carry. What a child can see
 * decides instead: the way is shut by an X who is nearer to its end than they are, or within a step of it (the width of a
 * place, `placeMetres`).
 */
function isInCarry(step: TimedStep, at: Point, { limits }: ShutModel): boolean {
  const isNearer = millimetresOf(distance(at, step.to)) < millimetresOf(distance(step.from, step.to))
  return isNearer || millimetresOf(distanceToSegment(at, step)) < millimetresOf(limits.placeMetres.value)
}

/** The same question as the notes ask, by the same function: the measure of everything below. */
function isShutExactly(step: TimedStep, at: Point, model: ShutModel): boolean {
  const margin = opponentMargin({ profile: model.opponents }, step, at)
  return margin !== null && millisecondsOf(margin) < limitMs(model)
}

function limitMs({ limits }: ShutModel): Milliseconds {
  return millisecondsOf(limits.laneMarginSeconds.value)
}

type Verdict = 'shut' | 'close' | 'clear'

/** Metres by which the quick answer stays on the safe side of rounding: far above it, far below what matters. */
const SLACK = 1e-6
/** Halvings of a lane before the exact margin is asked: pieces of half a millimetre on the longest pass. */
const HALVINGS = 16

/** A rolling ball and X as plain numbers. */
type Chase = {
  readonly releaseSpeed: number
  readonly deceleration: number
  readonly speed: number
  readonly reach: number
  /** The limit less the reaction: how much of the ball's time X may add to their run. */
  readonly head: number
}

/**
 * An X shuts a lane from inside the union of discs round its points: with reach r, speed v and a reaction they are too near to
 * a point that the ball reaches at time t when nearer than r + v·(limit + t − reaction). That radius only grows along the
 * lane. So a piece of it is clear of an X who is further from all of it than the radius at its end, and shut by one who is
 * nearer to its end than that; anything else is halved, and the exact margin is asked only where halving does not tell.
 */
function shutsRolling(step: TimedStep, ball: RollingBall, model: ShutModel): (at: Point) => boolean {
  const { from, to } = step
  const { topSpeed, reaction, reach } = model.opponents
  const length = distance(from, to)
  const end = Math.min(length, stopDistance(ball))
  const ux = length === 0 ? 0 : (to.x - from.x) / length
  const uy = length === 0 ? 0 : (to.y - from.y) / length
  const chase: Chase = {
    ...ball,
    speed: topSpeed.value,
    reach: reach.value,
    // Whole milliseconds are shut below the limit: half of one less is where rounding turns.
    head: (limitMs(model) - 0.5) / 1000 - reaction.value,
  }
  return (at) => {
    const dx = at.x - from.x
    const dy = at.y - from.y
    const aside = dx * uy - dy * ux
    const off = length === 0 ? dx * dx + dy * dy : aside * aside
    const verdict = verdictOn(chase, dx * ux + dy * uy, off, 0, end, HALVINGS)
    return verdict === 'shut' || (verdict === 'close' && isShutExactly(step, at, model))
  }
}

/** For an X so far along the lane and, squared, off it: is the piece from `low` to `high` shut? */
function verdictOn(chase: Chase, along: number, off: number, low: number, high: number, halvings: number): Verdict {
  const run = runAt(chase, high)
  const outer = run > -SLACK ? chase.reach + Math.max(0, run) + SLACK : 0
  const gap = along > high ? along - high : along < low ? low - along : 0
  if (gap * gap + off >= outer * outer) return 'clear'
  const inner = run > SLACK ? chase.reach + run - SLACK : 0
  if ((along - high) * (along - high) + off < inner * inner) return 'shut'
  if (halvings === 0) return 'close'
  const middle = (low + high) / 2
  const far = verdictOn(chase, along, off, middle, high, halvings - 1)
  if (far === 'shut') return far
  const near = verdictOn(chase, along, off, low, middle, halvings - 1)
  return near === 'clear' ? far : near
}

/** How far X can have run when the ball is there and the margin is at its limit; negative before they start. */
function runAt({ releaseSpeed, deceleration, speed, head }: Chase, at: number): number {
  const left = Math.sqrt(Math.max(0, releaseSpeed * releaseSpeed - 2 * deceleration * at))
  const sum = releaseSpeed + left
  return speed * (head + (sum === 0 ? 0 : (2 * at) / sum))
}
