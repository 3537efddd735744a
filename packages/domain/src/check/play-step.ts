import type { FormatChoices } from '../formats'
import { between, distance, type Point } from '../geometry'
import type { BallAction, PatternDocument, Position, Run, Step } from '../pattern'
import { actorOf, placeOf, receiverOf } from '../pattern'
import type { Space, Spot } from '../pitch'
import { assert, type MetresPerSecond, metres, type Seconds, seconds } from '../quantities'
import { releaseSpeedFor } from './ball'
import { type BallPlayed, flyBall, incomingSpeed, rollBall, rollOn } from './ball-played'
import { placerFor } from './places'
import type { AgeProfile } from './profiles'
import { type Runner, runDuration } from './runner'
import { BALL_DECELERATION, type Surface } from './surfaces'
import type { TimedStep } from './timed-step'
import { destinationOf, pointOnTrack, settledAt, type Track, withLeg } from './tracks'

/** What does not change from step to step. */
export type Setting = {
  readonly profile: AgeProfile
  readonly surface: Surface
  readonly runner: Runner
  readonly carrier: Runner
  readonly place: (spot: Spot) => Point
  readonly target: (targetId: string) => Point
  readonly isGate: (targetId: string) => boolean
}

export type Tracks = ReadonlyMap<Position, Track>
/** The copy a step is played on. */
type MovingTracks = Map<Position, Track>
export type State = { readonly steps: readonly TimedStep[]; readonly tracks: Tracks }

/** A receiver this near the ball takes it without another run. */
const WITHIN_REACH_METRES = 0.5

export function settingOf(
  document: PatternDocument,
  space: Space,
  profile: AgeProfile,
  surface: Surface,
  choices?: FormatChoices,
): Setting {
  const place = placerFor(document, space, choices)
  const acceleration = profile.acceleration.value
  return {
    profile,
    surface,
    place,
    runner: { acceleration, topSpeed: profile.topSpeed.value },
    carrier: { acceleration, topSpeed: profile.carrySpeed.value },
    isGate: (targetId) => document.targets.some((each) => each.targetId === targetId && each.kind === 'gate'),
    target: (targetId) => {
      const target = document.targets.find((each) => each.targetId === targetId)
      assert(target !== undefined, `no target ${targetId}`)
      return place(target.spot)
    },
  }
}

/** Plays one step on top of those before it; the step after it matters only where a dummy lets the ball through. */
export function playStep(state: State, step: Step, next: Step | undefined, setting: Setting): State {
  const { action, runs } = step
  const previous = state.steps.at(-1)
  const startsAt = readyAt(previous, action, setting)
  const actor = actorOf(action)
  const receiver = receiverOf(action)
  const from = pointOnTrack(trackOf(state.tracks, actor), startsAt)
  // One copy a step: what happens within it is written into that, in the order in which it happens.
  const tracks = new Map(state.tracks)
  startRuns(tracks, runs, actor, setting, (run) => earlyCue(run, startsAt, previous))
  const goal = meetingPoint(action, tracks, setting)
  const ball = playBall(action, from, goal, { previous, onward: onwardPoint(next, tracks, setting) }, setting)
  const to = ball.shortBy > 0 ? between(from, goal, 1 - ball.shortBy / distance(from, goal)) : goal
  const ballArrivesAt = seconds(startsAt + ball.duration)
  // Whoever is to meet the ball in space but waits for it to arrive sets off only then.
  const waiting = runs.filter((run) => isWaitedFor(run, action, receiver))
  startRuns(tracks, waiting, actor, setting, () => ballArrivesAt)
  if (receiver !== null) meetBall(tracks, receiver, to, startsAt, ball, setting)
  const receiverArrivesAt = receiver === null ? null : settledAt(trackOf(tracks, receiver))
  const timed: TimedStep = {
    stepId: step.stepId,
    kind: action.kind,
    actor,
    receiver,
    startsAt,
    from,
    to,
    flight: ball.flight,
    ballArrivesAt,
    receiverArrivesAt,
    receivedAt: seconds(Math.max(ballArrivesAt, receiverArrivesAt ?? 0)),
    shortBy: ball.shortBy,
  }
  const after = runs.filter((run) => run.start === 'after-the-ball' && !waiting.includes(run))
  startRuns(tracks, after, actor, setting, () => ballArrivesAt)
  return { steps: [...state.steps, timed], tracks }
}

function isWaitedFor(run: Run, action: BallAction, receiver: Position | null): boolean {
  return run.start === 'after-the-ball' && run.position === receiver && 'into' in action && action.into.kind === 'space'
}

/** When the player on the ball can play it: after receiving, turning and looking, or at once. */
function readyAt(previous: TimedStep | undefined, action: BallAction, setting: Setting): Seconds {
  if (previous === undefined) return seconds(0)
  // A dummy does not touch the ball, so it waits for nothing.
  if (action.kind === 'dummy') return previous.ballArrivesAt
  return seconds(previous.receivedAt + handlingSeconds(previous, action, setting))
}

function handlingSeconds(previous: TimedStep, action: BallAction, { profile }: Setting): number {
  if (previous.flight.kind === 'carried') return profile.oneTouch.value
  switch (action.kind) {
    case 'pass':
      return action.touches === 1 ? profile.oneTouch.value : profile.receiveTurnLook.value
    case 'set-back':
      return profile.oneTouch.value
    case 'throw':
    case 'roll':
      return profile.receiveTurnLook.value
    case 'carry':
    case 'dribble-past':
    case 'shot':
      return profile.firstTouch.value
    case 'dummy':
      return 0
  }
}

/** What a run that starts before or with the ball waits for. Before the restart there is nothing to wait for. */
function earlyCue(run: Run, startsAt: Seconds, previous: TimedStep | undefined): Seconds | null {
  switch (run.start) {
    case 'before-the-ball':
      return previous?.startsAt ?? seconds(0)
    case 'with-the-ball':
      return startsAt
    case 'after-the-ball':
      return null
  }
}

/** Starts the runs that have a cue: a reaction after it, or at once for the player who gives it. */
function startRuns(
  tracks: MovingTracks,
  runs: readonly Run[],
  actor: Position,
  setting: Setting,
  cueOf: (run: Run) => Seconds | null,
): void {
  for (const run of runs) {
    const cue = cueOf(run)
    if (cue === null) continue
    const startsAt = seconds(cue + (run.position === actor ? 0 : setting.profile.reaction.value))
    tracks.set(run.position, withLeg(trackOf(tracks, run.position), setting.place(run.to), startsAt, setting.runner))
  }
}

/** Where the ball is to be met: the place the action names, or where the receiver stands once their run is over. */
function meetingPoint(action: BallAction, tracks: Tracks, setting: Setting): Point {
  if (action.kind === 'shot') return setting.target(action.target)
  const place = placeOf(action)
  if (place !== null) return setting.place(place)
  const receiver = receiverOf(action)
  assert(receiver !== null, 'only a shot has no receiver')
  return destinationOf(trackOf(tracks, receiver))
}

/** Where the ball goes on to when the next step lets it through. */
function onwardPoint(next: Step | undefined, tracks: Tracks, setting: Setting): Point | null {
  if (next?.action.kind !== 'dummy') return null
  const { to } = next.action
  const run = next.runs.find((each) => each.position === to && each.start !== 'after-the-ball')
  return run === undefined ? destinationOf(trackOf(tracks, to)) : setting.place(run.to)
}

type Around = { readonly previous: TimedStep | undefined; readonly onward: Point | null }

function playBall(action: BallAction, from: Point, to: Point, around: Around, setting: Setting): BallPlayed {
  const { profile, surface } = setting
  const length = distance(from, to)
  const deceleration = BALL_DECELERATION[surface].value
  const kick = profile.kickSpeedMax.value
  const throwing = profile.throwSpeedMax.value
  // A ball that is let through must arrive fast enough to roll on to whom it is meant for.
  const arrival = wantedArrival(action, setting)
  const speed = around.onward === null ? arrival : releaseSpeedFor(arrival, distance(to, around.onward), deceleration)
  switch (action.kind) {
    case 'carry':
    case 'dribble-past':
      return { flight: { kind: 'carried' }, duration: runDuration(setting.carrier, length), shortBy: metres(0) }
    case 'pass':
      return action.height === 'air' ? flyBall(length, kick) : rollBall(length, speed, kick, deceleration)
    case 'set-back':
      return rollBall(length, speed, kick, deceleration)
    case 'throw':
      return flyBall(length, throwing)
    case 'roll':
      return rollBall(length, speed, throwing, deceleration)
    case 'dummy': {
      if (around.previous === undefined) return rollBall(length, speed, kick, deceleration)
      const { flight, from: struck, to: passed } = around.previous
      return rollOn({ releaseSpeed: incomingSpeed(flight, distance(struck, passed)), deceleration }, length)
    }
    case 'shot':
      // Through a gate goes a pass, weighted for somebody behind it.
      return setting.isGate(action.target)
        ? rollBall(length, speed, kick, deceleration)
        : rollOn({ releaseSpeed: kick, deceleration }, length)
  }
}

function wantedArrival(action: BallAction, { profile }: Setting): MetresPerSecond {
  return placeOf(action) === null ? profile.arrivalSpeed.value : profile.arrivalSpeedIntoSpace.value
}

/** The receiver goes to the ball: the carrier with it, anyone else after a reaction and after a run that is on. */
function meetBall(
  tracks: MovingTracks,
  receiver: Position,
  to: Point,
  startsAt: Seconds,
  ball: BallPlayed,
  setting: Setting,
): void {
  const track = trackOf(tracks, receiver)
  if (ball.flight.kind === 'carried') {
    tracks.set(receiver, withLeg(track, to, startsAt, setting.carrier))
  } else if (distance(destinationOf(track), to) > WITHIN_REACH_METRES) {
    const leaves = seconds(Math.max(startsAt + setting.profile.reaction.value, settledAt(track)))
    tracks.set(receiver, withLeg(track, to, leaves, setting.runner))
  }
}

function trackOf(tracks: Tracks, position: Position): Track {
  const track = tracks.get(position)
  assert(track !== undefined, `${position} has no starting place`)
  return track
}
