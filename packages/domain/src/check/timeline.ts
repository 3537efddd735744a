import type { FormatChoices } from '../formats'
import { between, distance, type Point } from '../geometry'
import type { PatternDocument, Position } from '../pattern'
import type { Space } from '../pitch'
import { assert, type Seconds, seconds } from '../quantities'
import { shareTravelled } from './ball-played'
import { playStep, type Setting, type State, settingOf } from './play-step'
import type { AgeProfile } from './profiles'
import type { Surface } from './surfaces'
import type { TimedStep } from './timed-step'
import { pointOnTrack, settledAt, type Track } from './tracks'

/** The whole pattern in time, for the players drawn; deterministic, and mirrored with its document. */
export type Timeline = {
  readonly steps: readonly TimedStep[]
  readonly tracks: readonly Track[]
  readonly endsAt: Seconds
}

/** Plays the trunk of a document on a space. The document must have passed `checkShape`. */
export function timelineOf(
  document: PatternDocument,
  space: Space,
  profile: AgeProfile,
  surface: Surface,
  choices?: FormatChoices,
): Timeline {
  return timelineAfter(playStates(document, settingOf(document, space, profile, surface, choices)).at(-1)!)
}

/** How much of a way is to be played. */
export type Playing = {
  /** What stands before the first steps already, where another way has played the same ones. */
  readonly known?: readonly State[]
  /** Asked after each step: is what comes after it of no interest? */
  readonly isEnough?: (state: State) => boolean
}

/** Everything known before each step, and after the last: a step can be tried again without playing those before it. */
export function playStates(document: PatternDocument, setting: Setting, playing: Playing = {}): readonly State[] {
  const states = playing.known === undefined ? [startOf(document, setting)] : [...playing.known]
  for (let index = states.length - 1; index < document.steps.length; index += 1) {
    const state = playStep(states[index]!, document.steps[index]!, document.steps[index + 1], setting)
    states.push(state)
    if (playing.isEnough?.(state)) break
  }
  return states
}

function startOf(document: PatternDocument, setting: Setting): State {
  const tracks = document.positions.map(
    ({ position, spot }): Track => ({ position, start: setting.place(spot), legs: [] }),
  )
  return { steps: [], tracks: new Map(tracks.map((track) => [track.position, track])) }
}

/** What stands once a state's steps are played. */
export function timelineAfter(state: State): Timeline {
  const tracks = [...state.tracks.values()]
  const ends = [...state.steps.map((step) => step.receivedAt), ...tracks.map(settledAt)]
  return { steps: state.steps, tracks, endsAt: seconds(Math.max(0, ...ends)) }
}

export type PlacedPlayer = { readonly position: Position; readonly point: Point }

/** Where everyone is at a time; before the start and after the end they stand. */
export function playersAt(timeline: Timeline, at: Seconds): readonly PlacedPlayer[] {
  return timeline.tracks.map((track) => ({ position: track.position, point: pointOnTrack(track, at) }))
}

/** Where one player is at a time. */
export function playerAt(timeline: Timeline, position: Position, at: Seconds): Point {
  const track = timeline.tracks.find((each) => each.position === position)
  assert(track !== undefined, `no player ${position} in this timeline`)
  return pointOnTrack(track, at)
}

export type PlacedBall = { readonly point: Point; readonly holder: Position | null }

/** Where the ball is at a time and who has it: nobody while it travels or lies. Null for a pattern without steps. */
export function ballAt(timeline: Timeline, at: Seconds): PlacedBall | null {
  const first = timeline.steps[0]
  if (first === undefined) return null
  const step = timeline.steps.findLast((each) => each.startsAt <= at)
  if (step === undefined) return { point: first.from, holder: first.actor }
  if (step.flight.kind === 'carried') return { point: playerAt(timeline, step.actor, at), holder: step.actor }
  if (at < step.ballArrivesAt) {
    const share = shareTravelled(step.flight, distance(step.from, step.to), seconds(at - step.startsAt))
    return { point: between(step.from, step.to, share), holder: null }
  }
  if (step.receiver === null || at < step.receivedAt) return { point: step.to, holder: null }
  return { point: playerAt(timeline, step.receiver, at), holder: step.receiver }
}
