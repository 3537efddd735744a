import { between, distance, type Point } from '../../geometry'
import { type Metres, metres, type Seconds, seconds } from '../../quantities'
import type { Runner } from '../runner'

/** One straight run that starts with the speed the last one left in its direction. */
type Way = {
  readonly from: Point
  readonly to: Point
  readonly length: Metres
  readonly startsAt: Seconds
  readonly startSpeed: number
}

/** An opponent in motion: where they are, and where they run, after what happened so far. */
export type MovingOpponent = { readonly runner: Runner; readonly ways: readonly Way[] }

export function opponentAt(at: Point, runner: Runner): MovingOpponent {
  return { runner, ways: [{ from: at, to: at, length: metres(0), startsAt: seconds(0), startSpeed: 0 }] }
}

/**
 * Sends an opponent to a place from where they are at a time. A turn costs the speed across the new direction: what
 * points along it is kept, so that a press which follows the ball does not start from rest at every pass.
 */
export function sendTo(opponent: MovingOpponent, to: Point, at: Seconds): MovingOpponent {
  const from = whereIs(opponent, at)
  const length = distance(from, to)
  const way = { from, to, length, startsAt: at, startSpeed: speedTowards(opponent, from, to, length, at) }
  return { ...opponent, ways: [...opponent.ways.filter((each) => each.startsAt < at), way] }
}

export function whereIs(opponent: MovingOpponent, at: Seconds): Point {
  const way = wayAt(opponent, at)
  if (way.length === 0) return way.to
  const gone = lengthAfter(opponent.runner, way.startSpeed, at - way.startsAt)
  return between(way.from, way.to, Math.min(1, gone / way.length))
}

/** Where an opponent is going, or stands. */
export function headingFor(opponent: MovingOpponent): Point {
  return lastWay(opponent).to
}

/** When the run an opponent is on brings the place where it ends within reach; null for any other place. */
export function reachesAt(opponent: MovingOpponent, place: Point, reach: Metres): Seconds | null {
  const way = lastWay(opponent)
  if (distance(way.to, place) > 1e-9) return null
  const left = Math.max(0, way.length - reach)
  return seconds(way.startsAt + durationOver(opponent.runner, way.startSpeed, left))
}

/**
 * The same for an opponent who slows down to stand there: whoever runs at a player on the ball at full speed runs past
 * them. They brake as hard as they speed up; one who is too fast to stop in time has to come back.
 */
export function standsAt(opponent: MovingOpponent, place: Point, reach: Metres): Seconds | null {
  const way = lastWay(opponent)
  if (distance(way.to, place) > 1e-9) return null
  const left = Math.max(0, way.length - reach)
  return seconds(way.startsAt + durationToStand(opponent.runner, way.startSpeed, left))
}

/** When an opponent who is sent to a place at a time has it within reach. */
export function arrivalAt(opponent: MovingOpponent, place: Point, at: Seconds, reach: Metres): Seconds {
  const from = whereIs(opponent, at)
  const length = distance(from, place)
  const way = Math.max(0, length - reach)
  if (way === 0) return at
  return seconds(at + durationOver(opponent.runner, speedTowards(opponent, from, place, length, at), way))
}

function speedTowards(opponent: MovingOpponent, from: Point, to: Point, length: Metres, at: Seconds): number {
  const way = wayAt(opponent, at)
  if (way.length === 0 || length === 0) return 0
  const gone = lengthAfter(opponent.runner, way.startSpeed, at - way.startsAt)
  // Whoever has arrived stands.
  if (gone >= way.length) return 0
  const speed = speedAfter(opponent.runner, way.startSpeed, at - way.startsAt)
  const along =
    ((way.to.x - way.from.x) * (to.x - from.x) + (way.to.y - way.from.y) * (to.y - from.y)) / (way.length * length)
  return speed * Math.max(0, along)
}

function wayAt(opponent: MovingOpponent, at: Seconds): Way {
  return opponent.ways.findLast((way) => way.startsAt <= at) ?? opponent.ways[0]!
}

function lastWay(opponent: MovingOpponent): Way {
  return opponent.ways.at(-1)!
}

/** Speed after a time, from a start speed, by bounded acceleration. */
function speedAfter({ acceleration, topSpeed }: Runner, startSpeed: number, elapsed: number): number {
  return Math.min(topSpeed, startSpeed + acceleration * Math.max(0, elapsed))
}

/** Length run after a time: v₀t + at²/2 up to the top speed, and on at that speed. */
function lengthAfter({ acceleration, topSpeed }: Runner, startSpeed: number, elapsed: number): number {
  const time = Math.max(0, elapsed)
  const ramp = Math.min(time, (topSpeed - startSpeed) / acceleration)
  return startSpeed * ramp + (acceleration * ramp * ramp) / 2 + topSpeed * (time - ramp)
}

/** Time to run a length: the inverse of `lengthAfter`; from rest it is `runDuration`. */
export function durationOver({ acceleration, topSpeed }: Runner, startSpeed: number, length: number): number {
  if (length === 0) return 0
  const rampLength = (topSpeed * topSpeed - startSpeed * startSpeed) / (2 * acceleration)
  if (length <= rampLength) {
    // Multiplied out: it keeps its digits where the way is short.
    return (2 * length) / (startSpeed + Math.sqrt(startSpeed * startSpeed + 2 * acceleration * length))
  }
  return (topSpeed - startSpeed) / acceleration + (length - rampLength) / topSpeed
}

/** Time to run a length and stand at its end, speeding up and braking alike; over the end and back where that is too short. */
export function durationToStand(runner: Runner, startSpeed: number, length: number): number {
  const { acceleration, topSpeed } = runner
  const braking = (startSpeed * startSpeed) / (2 * acceleration)
  if (length < braking) return startSpeed / acceleration + durationToStand(runner, 0, braking - length)
  const peak = Math.sqrt(acceleration * length + (startSpeed * startSpeed) / 2)
  if (peak <= topSpeed) return (2 * peak - startSpeed) / acceleration
  const ramps = (2 * topSpeed * topSpeed - startSpeed * startSpeed) / (2 * acceleration)
  return (2 * topSpeed - startSpeed) / acceleration + (length - ramps) / topSpeed
}
