import { between, distance, type Point } from '../geometry'
import type { Position } from '../pattern'
import type { Metres, Seconds } from '../quantities'
import { seconds } from '../quantities'
import { type Runner, runDuration, runLength } from './runner'

/** One straight run of one player. */
export type Leg = {
  readonly from: Point
  readonly to: Point
  readonly startsAt: Seconds
  readonly endsAt: Seconds
  readonly length: Metres
  readonly runner: Runner
}

/** A player's way through the pattern: where they start and every leg, in order of start. */
export type Track = { readonly position: Position; readonly start: Point; readonly legs: readonly Leg[] }

/** Where the player is at a time; a leg that starts while another lasts cuts it short. */
export function pointOnTrack(track: Track, at: Seconds): Point {
  let last = track.legs.length - 1
  while (last >= 0 && track.legs[last]!.startsAt > at) last -= 1
  const leg = track.legs[last]
  if (leg === undefined) return track.start
  if (at >= leg.endsAt || leg.length === 0) return leg.to
  const run = runLength(leg.runner, seconds(at - leg.startsAt))
  return between(leg.from, leg.to, Math.min(1, run / leg.length))
}

/** Where the player is going, or stands for good. */
export function destinationOf(track: Track): Point {
  return track.legs.at(-1)?.to ?? track.start
}

/** When the player is there: zero for one who never ran. */
export function settledAt(track: Track): Seconds {
  return track.legs.at(-1)?.endsAt ?? seconds(0)
}

/** Adds a run. It cannot start before the run before it did; a run to where the player already goes adds nothing. */
export function withLeg(track: Track, to: Point, startsAt: Seconds, runner: Runner): Track {
  const goal = destinationOf(track)
  if (goal.x === to.x && goal.y === to.y) return track
  const start = seconds(Math.max(startsAt, track.legs.at(-1)?.startsAt ?? 0))
  const from = pointOnTrack(track, start)
  const length = distance(from, to)
  const endsAt = seconds(start + runDuration(runner, length))
  const legs = [...track.legs, { from, to, startsAt: start, endsAt, length, runner }]
  return { position: track.position, start: track.start, legs }
}
