import { addLeg, destine, runSeconds, settledAt, stand } from './legs'
import {
  AT_X,
  AT_Y,
  BODY_X,
  BODY_Y,
  DEVIATE,
  drawDeviate,
  type Memory,
  PLACE_X,
  PLACE_Y,
  PLAN_X,
  PLAN_Y,
  REACTION,
  RECEIVED_AT,
  SPEED_THERE,
  STARTS_AT,
  THERE_AT,
  UNIT_X,
  UNIT_Y,
} from './memory'
import { opponentMeetsAt } from './opponents'
import type { Program } from './program'
import { RECEIVER, TOUCH_ACROSS, TOUCH_ALONG } from './quantities-erred'
import { drawReaction } from './run-starts'

/** A receiver this near the ball's place takes it without another run, as in the timeline. */
const WITHIN_REACH_SQUARED = 0.25

/** A ball is out once the whole of it is over the line: a size 5 ball has a radius of 0.11 m (IFAB Laws of the Game, 2 and 9). */
const BALL_RADIUS = 0.11

export function isOut(program: Program, x: number, y: number): boolean {
  const side = program.spaceHalfWidth + BALL_RADIUS
  return x < -BALL_RADIUS || x > program.spaceLength + BALL_RADIUS || y < -side || y > side
}

/** Sends the receiver to where the ball was to be met, as the timeline does: after a reaction and after a run that is on. */
export function sendReceiver(program: Program, memory: Memory, step: number): void {
  const { now } = memory
  const player = program.receiver[step]!
  drawReaction(program, memory, step, RECEIVER)
  destine(program, memory, player)
  const dx = now[PLACE_X]! - now[PLAN_X]!
  const dy = now[PLACE_Y]! - now[PLAN_Y]!
  if (dx * dx + dy * dy > WITHIN_REACH_SQUARED) {
    const sees = now[STARTS_AT]! + now[REACTION]!
    const free = settledAt(program, memory, player)
    addLeg(program, memory, player, now[PLAN_X]!, now[PLAN_Y]!, Math.max(sees, free), program.topSpeed)
    now[BODY_X] = now[PLAN_X]!
    now[BODY_Y] = now[PLAN_Y]!
  } else {
    now[BODY_X] = now[PLACE_X]!
    now[BODY_Y] = now[PLACE_Y]!
  }
  now[THERE_AT] = settledAt(program, memory, player)
}

/** When the receiver is at a ball that comes this far from where they wait: a leg costs nothing, a step its time. */
export function readyAt(program: Program, memory: Memory, off: number): number {
  const { now } = memory
  if (off <= program.reach) return now[THERE_AT]!
  const sees = now[STARTS_AT]! + now[REACTION]!
  const free = Math.max(now[THERE_AT]!, sees)
  return free + runSeconds(program.acceleration, program.topSpeed, off - program.reach)
}

/**
 * How long a receiver who starts from rest on a ball's way needs to catch it where it is `gap` metres ahead, beyond their
 * leg, and rolls away with `speed`. The gap bends down all the time the ball rolls, so it closes once:
 * while both change speed, with the runner at top speed, or where the ball lies. Each is the root of a quadratic.
 */
export function chaseSeconds(program: Program, gap: number, speed: number): number {
  const { acceleration, topSpeed, deceleration } = program
  const rolls = speed / deceleration
  const toRest = runSeconds(acceleration, topSpeed, gap + (speed * speed) / (2 * deceleration))
  if (toRest >= rolls) return toRest
  const both = acceleration + deceleration
  const early = (speed + Math.sqrt(speed * speed + 2 * both * gap)) / both
  if (early <= topSpeed / acceleration) return early
  const lead = gap + (topSpeed * topSpeed) / (2 * acceleration)
  const faster = topSpeed - speed
  return (2 * lead) / (faster + Math.sqrt(faster * faster + 2 * deceleration * lead))
}

/**
 * The receiver has the ball where it now is. A ball that must be brought under control jumps off along its way and across
 * it; going after it takes time, and an opponent or the line may have it first. False where they do.
 */
export function takeBall(program: Program, memory: Memory, step: number): boolean {
  const { now } = memory
  const player = program.receiver[step]!
  const spread = program.touchSpread[step]! * now[SPEED_THERE]!
  let x = now[BODY_X]! + now[AT_X]! - now[PLAN_X]!
  let y = now[BODY_Y]! + now[AT_Y]! - now[PLAN_Y]!
  if (spread > 0) {
    drawDeviate(memory, step, TOUCH_ALONG)
    const along = spread * now[DEVIATE]!
    drawDeviate(memory, step, TOUCH_ACROSS)
    const across = spread * program.side * now[DEVIATE]!
    const jumpX = along * now[UNIT_X]! - across * now[UNIT_Y]!
    const jumpY = along * now[UNIT_Y]! + across * now[UNIT_X]!
    const off = Math.sqrt(jumpX * jumpX + jumpY * jumpY)
    x += jumpX
    y += jumpY
    if (off > program.reach) {
      const lost = runSeconds(program.acceleration, program.topSpeed, off - program.reach)
      if (isOut(program, now[AT_X]! + jumpX, now[AT_Y]! + jumpY)) return false
      if (opponentMeetsAt(program, now[AT_X]! + jumpX, now[AT_Y]! + jumpY, lost)) return false
      now[RECEIVED_AT]! += lost
    }
  }
  stand(program, memory, player, x, y, now[RECEIVED_AT]!)
  return true
}
