import type { Point } from '../../geometry'
import type { Metres, Seconds } from '../../quantities'
import { millisecondsOf, seconds } from '../../quantities'
import type { TimedStep } from '../timed-step'
import { type BallMoment, ballMoments } from './ball-way'
import type { Behaviour } from './behaviours'
import { arrivalAt, type MovingOpponent, opponentAt, reachesAt, standsAt, whereIs } from './moving-opponent'
import { nextPlay, type Play } from './play'
import type { PressSetting } from './press-setting'
import type { StartPlace } from './start-places'

export const BREAKS = ['cut-out', 'first-to-it', 'tackled'] as const
export type BreakKind = (typeof BREAKS)[number]

/** How a pattern was stopped. */
export type Break = {
  /** Cut out: on the ball's way; first to it: before a receiver who is late; tackled: on the player with the ball. */
  readonly kind: BreakKind
  readonly stepId: string
  readonly at: Seconds
  /** Which opponent, by their place in the list of starts, and where they came from and won it. */
  readonly by: number
  readonly from: Point
  readonly where: Point
  /** Where all opponents were as the step was played. */
  readonly stood: readonly Point[]
}

/**
 * Plays a pattern against opponents who start at some places and behave in one way, taking the looks it has. Null where it
 * gets out. Event by event: each ball is a cue, a reaction later every opponent runs for a place where the ball can be had,
 * or else where their behaviour sends them. A break on the way comes before one at its end.
 */
export function press(
  start: Play,
  starts: readonly StartPlace[],
  behaviour: Behaviour,
  setting: PressSetting,
): Break | null {
  let opponents: readonly MovingOpponent[] = starts.map((each) => opponentAt(each.at, setting.runner))
  let play = start
  for (let index = 0; index < play.timeline.steps.length; index += 1) {
    const here = (at: Seconds) => opponents.map((each) => whereIs(each, at))
    play = nextPlay(play, index, here, setting)
    const step = play.timeline.steps[index]
    if (step === undefined) return null
    const cue = seconds(Math.max(step.startsAt, setting.releasedAt(play.timeline)) + setting.reaction)
    const stop = (found: Found): Break => ({
      kind: found.kind,
      stepId: step.stepId,
      at: found.at,
      by: found.by,
      from: starts[found.by]!.at,
      where: found.where,
      stood: here(step.startsAt),
    })
    const cut = earliest(onTheWay(play, step, opponents, cue, starts, setting))
    if (cut !== null) return stop(cut)
    opponents = behaviour({ opponents, starts, step, timeline: play.timeline, cue })
    const won = earliest(atTheEnd(play, index, opponents, setting))
    if (won !== null) return stop(won)
  }
  return null
}

type Found = { readonly kind: BreakKind; readonly at: Seconds; readonly by: number; readonly where: Point }

function onTheWay(
  play: Play,
  step: TimedStep,
  opponents: readonly MovingOpponent[],
  cue: Seconds,
  starts: readonly StartPlace[],
  setting: PressSetting,
): readonly Found[] {
  const moments = ballMoments(play.timeline, step)
  const kind = step.flight.kind === 'carried' ? 'tackled' : 'cut-out'
  return opponents.flatMap((opponent, by) => {
    if (isPassed(play, step, starts[by]!)) return []
    const first = moments.find((moment) => hasReached(opponent, moment, cue, setting.reach))
    return first === undefined ? [] : [{ kind, at: first.at, by, where: first.place }]
  })
}

/** Whole milliseconds, so that browser and server decide alike. */
function hasReached(opponent: MovingOpponent, { place, at }: BallMoment, cue: Seconds, reach: Metres): boolean {
  return millisecondsOf(arrivalAt(opponent, place, cue, reach)) <= millisecondsOf(at)
}

/** Whom a dribble goes past does not win the ball by standing there: that is what the step says. */
function isPassed(play: Play, step: TimedStep, start: StartPlace): boolean {
  const action = play.document.steps.find((each) => each.stepId === step.stepId)?.action
  return action?.kind === 'dribble-past' && action.past === start.obstacleId
}

/** A receiver who is late loses the race to the ball; one who waits on it too long is tackled. */
function atTheEnd(
  play: Play,
  index: number,
  opponents: readonly MovingOpponent[],
  { reach }: PressSetting,
): readonly Found[] {
  const step = play.timeline.steps[index]!
  const next = play.timeline.steps[index + 1]
  // A ball that is let through is nobody's until it has run on: the next step's way tells who gets it.
  if (step.receiver === null || next?.kind === 'dummy') return []
  return opponents.flatMap((opponent, by): readonly Found[] => {
    const there = reachesAt(opponent, step.to, reach)
    if (there !== null && millisecondsOf(there) < millisecondsOf(step.receivedAt)) {
      return [{ kind: 'first-to-it', at: seconds(Math.max(there, step.ballArrivesAt)), by, where: step.to }]
    }
    const stands = standsAt(opponent, step.to, reach)
    if (stands === null || next === undefined) return []
    if (millisecondsOf(stands) >= millisecondsOf(next.startsAt)) return []
    return [{ kind: 'tackled', at: seconds(Math.max(stands, step.receivedAt)), by, where: step.to }]
  })
}

/** The first to win it; of two at the same millisecond the one named first. */
function earliest(found: readonly Found[]): Found | null {
  return found.reduce<Found | null>(
    (first, each) => (first === null || millisecondsOf(each.at) < millisecondsOf(first.at) ? each : first),
    null,
  )
}
