import { flyErredBall } from './fly'
import { addLeg, destine, locate, settledAt } from './legs'
import { INTERCEPTED, KEPT, LOSS_CAUSES, OUT, TOUCH } from './loss-causes'
import {
  ARRIVES_AT,
  AT_X,
  AT_Y,
  FROM_X,
  FROM_Y,
  type Memory,
  PLACE_X,
  PLACE_Y,
  RECEIVED_AT,
  SINE,
  SPEED_THERE,
  STARTS_AT,
  startRun,
} from './memory'
import { opponentMeetsAt, opponentMeetsRoll } from './opponents'
import { AFTER, BEFORE, CARRIED, FLIES, NOBODY, type Program, ROLLS_ON, WITH } from './program'
import { isOut, takeBall } from './reception'
import { rollErredBall } from './roll'
import { startRuns } from './run-starts'

export const GOT_OUT = -1

/** Plays one run: `GOT_OUT`, or the step at which the ball is lost times the number of causes, plus the cause. */
export function playRun(program: Program, memory: Memory, seed: number, run: number): number {
  startRun(memory, seed, run)
  for (let step = 0; step < program.steps; step += 1) {
    const lost = playErredStep(program, memory, step)
    if (lost !== KEPT) return step * LOSS_CAUSES.length + lost
  }
  return GOT_OUT
}

/** One step on top of those before it, in the order of the timeline: early runs, the ball, who meets it, late runs. */
function playErredStep(program: Program, memory: Memory, step: number): number {
  const { now } = memory
  const flight = program.flight[step]!
  const before = now[STARTS_AT]!
  findBall(program, memory, step, flight)
  startRuns(program, memory, step, BEFORE, before)
  startRuns(program, memory, step, WITH, now[STARTS_AT]!)
  if (program.named[step] === 1) {
    now[PLACE_X] = program.goalX[step]!
    now[PLACE_Y] = program.goalY[step]!
  } else destine(program, memory, program.receiver[step]!)
  const lost = playBall(program, memory, step, flight)
  startRuns(program, memory, step, AFTER, now[ARRIVES_AT]!)
  return lost
}

/** When and where this step's ball leaves: at once and where it is if it is let through, else with its player. */
function findBall(program: Program, memory: Memory, step: number, flight: number): void {
  const { now } = memory
  if (flight === ROLLS_ON) {
    now[STARTS_AT] = now[ARRIVES_AT]!
    now[FROM_X] = now[AT_X]!
    now[FROM_Y] = now[AT_Y]!
    return
  }
  if (step > 0) now[STARTS_AT] = now[RECEIVED_AT]! + program.handling[step]!
  locate(program, memory, program.actor[step]!, now[STARTS_AT]!)
  now[FROM_X] = now[PLACE_X]!
  now[FROM_Y] = now[PLACE_Y]!
}

/** Plays the ball to the place in `memory`. */
function playBall(program: Program, memory: Memory, step: number, flight: number): number {
  const { now } = memory
  const goalX = now[PLACE_X]!
  const goalY = now[PLACE_Y]!
  if (flight === CARRIED) return carryBall(program, memory, step, goalX, goalY)
  const flies = flight === FLIES
  const lost = flies
    ? flyErredBall(program, memory, step, goalX, goalY)
    : rollErredBall(program, memory, step, flight, goalX, goalY)
  const window = now[RECEIVED_AT]! - now[STARTS_AT]!
  const isTheirs = flies
    ? opponentMeetsAt(program, now[AT_X]!, now[AT_Y]!, window)
    : opponentMeetsRoll(program, memory, window)
  if (isTheirs) return INTERCEPTED
  if (lost !== KEPT || program.receiver[step] === NOBODY || program.letThrough[step] === 1) return lost
  return takeBall(program, memory, step) ? KEPT : TOUCH
}

/** A carry does not err of itself: it is late where what came before it was. */
function carryBall(program: Program, memory: Memory, step: number, toX: number, toY: number): number {
  const { now } = memory
  const player = program.actor[step]!
  addLeg(program, memory, player, toX, toY, now[STARTS_AT]!, program.carrySpeed)
  const there = settledAt(program, memory, player)
  now[ARRIVES_AT] = Math.max(there, now[STARTS_AT]!)
  now[RECEIVED_AT] = now[ARRIVES_AT]!
  now[AT_X] = toX
  now[AT_Y] = toY
  now[SPEED_THERE] = 0
  now[SINE] = 0
  return isOut(program, toX, toY) ? OUT : KEPT
}
