import { distance, type Point } from '../../geometry'
import { actorOf, type PatternDocument, type Position, type Step } from '../../pattern'
import { metres, millimetresOf, millisecondsOf, seconds } from '../../quantities'
import { opponentMargin } from '../notes/lane-closed'
import { playStep } from '../play-step'
import type { TimedStep } from '../timed-step'
import { PRESS_BEHAVIOURS } from './behaviours'
import { durationToStand } from './moving-opponent'
import { type Play, playOf } from './play'
import { press } from './press'
import type { Prepared, Unmended } from './pressure'

/** A change against which the same opponents, coming the same way, do not stop the pattern at that step. */
export type Mend =
  /** The ball is played on as it comes. */
  | { readonly kind: 'one-touch'; readonly stepId: string; readonly by: Position }
  /** Team-mates who are free when the step is played: a look there has an answer. */
  | { readonly kind: 'look'; readonly stepId: string; readonly by: Position; readonly free: readonly Position[] }

/** No more names than a child can look for (habit). */
const FREE_MAX = 2

/** What helps against a break, tried and found to; empty where nothing that was tried does. */
export function mendsFor(prepared: Prepared, stopped: Unmended): readonly Mend[] {
  const play = playedTo(prepared.play, stopped.stepId)
  if (play === null) return []
  const index = play.document.steps.findIndex((step) => step.stepId === stopped.stepId)
  return [...oneTouchMend(prepared, play, index, stopped), ...lookMend(prepared, play, index, stopped)]
}

/** The way through the pattern on which a step is played; of several the first. */
function playedTo(play: Play, stepId: string): Play | null {
  if (play.document.steps.some((step) => step.stepId === stepId)) return play
  for (const turn of play.turns) {
    for (const answer of turn.answers) {
      const found = playedTo(answer.play(), stepId)
      if (found !== null) return found
    }
  }
  return null
}

/** Only where two touches were written, and one gets the ball away in time. */
function oneTouchMend(prepared: Prepared, play: Play, index: number, stopped: Unmended): readonly Mend[] {
  const next = play.document.steps[index + 1]
  if (stopped.kind !== 'tackled' || next?.action.kind !== 'pass' || next.action.touches === 1) return []
  const changed: Step = { ...next, action: { ...next.action, touches: 1 } }
  const document = replaced(play.document, changed)
  const found = press(
    playOf(document, prepared.timing),
    stopped.starts,
    PRESS_BEHAVIOURS[stopped.behaviour],
    prepared.setting,
  )
  const stepsTo = document.steps.findIndex((step) => step.stepId === found?.stepId)
  if (found !== null && stepsTo <= index) return []
  return [{ kind: 'one-touch', stepId: next.stepId, by: actorOf(next.action) }]
}

function replaced(document: PatternDocument, changed: Step): PatternDocument {
  return { ...document, steps: document.steps.map((step) => (step.stepId === changed.stepId ? changed : step)) }
}

function lookMend(prepared: Prepared, play: Play, index: number, stopped: Unmended): readonly Mend[] {
  const step = play.document.steps[index]
  const timed = play.timeline.steps[index]
  if (step === undefined || timed === undefined) return []
  const by = actorOf(step.action)
  const balls = play.document.positions
    .map((each) => each.position)
    .filter((position) => position !== by && position !== timed.receiver)
    .map((position) => ballTo(prepared, play, index, by, position))
    .filter((ball) => stopped.stood.every((at) => isFree(prepared, ball, at)))
  const nearest = [...balls].sort((a, b) => lengthOf(a) - lengthOf(b))
  const free = nearest.flatMap((ball) => (ball.receiver === null ? [] : [ball.receiver])).slice(0, FREE_MAX)
  return free.length === 0 ? [] : [{ kind: 'look', stepId: step.stepId, by, free }]
}

function ballTo({ timing }: Prepared, play: Play, index: number, by: Position, to: Position): TimedStep {
  const step: Step = {
    stepId: '',
    action: { kind: 'pass', from: by, to, into: { kind: 'feet' }, height: 'ground', touches: 2, foot: 'either' },
    runs: [],
    point: '',
  }
  return playStep(play.states[index]!, step, undefined, timing).steps.at(-1)!
}

function lengthOf(ball: TimedStep): number {
  return millimetresOf(distance(ball.from, ball.to))
}

/** The lane is open by the usual margin, and whoever takes the ball can play it on before the opponent stands there. */
function isFree({ profile, limits, setting }: Prepared, ball: TimedStep, opponent: Point): boolean {
  if (millimetresOf(ball.shortBy) > millimetresOf(limits.shortMetres.value)) return false
  const margin = opponentMargin({ profile }, ball, opponent)
  if (margin === null || millisecondsOf(margin) < millisecondsOf(limits.laneMarginSeconds.value)) return false
  const way = metres(Math.max(0, distance(opponent, ball.to) - setting.reach))
  const stands = seconds(ball.startsAt + setting.reaction + durationToStand(setting.runner, 0, way))
  return millisecondsOf(stands) > millisecondsOf(seconds(ball.receivedAt + profile.oneTouch.value))
}
