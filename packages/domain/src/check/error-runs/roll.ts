import { KEPT, MISSED, OUT, SHORT } from './loss-causes'
import {
  ARRIVES_AT,
  AT_X,
  AT_Y,
  FROM_X,
  FROM_Y,
  type Memory,
  PLAN_X,
  PLAN_Y,
  RECEIVED_AT,
  RELEASE,
  SPEED_THERE,
  STARTS_AT,
  UNIT_X,
  UNIT_Y,
} from './memory'
import { type Program, SHOT, WAITING } from './program'
import { chaseSeconds, isOut, readyAt, sendReceiver } from './reception'
import { startRuns } from './run-starts'
import { strikeBall } from './strike'

/** The largest rounding of v² at which a ball struck to stop at a place still arrives there, as in the timeline. */
const ARRIVES_SQUARED = -1e-9

/** Rolls a ball and finds whether and when it is met, opponents apart. */
export function rollErredBall(
  program: Program,
  memory: Memory,
  step: number,
  flight: number,
  goalX: number,
  goalY: number,
): number {
  const { now } = memory
  const passes = strikeBall(program, memory, step, flight, goalX, goalY)
  const { deceleration } = program
  const release = now[RELEASE]!
  const startsAt = now[STARTS_AT]!
  const squared = release * release - 2 * deceleration * passes
  const stops = squared < ARRIVES_SQUARED
  const rolled = stops ? (release * release) / (2 * deceleration) : passes
  const rest = squared > 0 ? Math.sqrt(squared) : 0
  now[SPEED_THERE] = rest
  now[AT_X] = now[FROM_X]! + now[UNIT_X]! * rolled
  now[AT_Y] = now[FROM_Y]! + now[UNIT_Y]! * rolled
  now[ARRIVES_AT] = startsAt + (release + rest > 0 ? (2 * rolled) / (release + rest) : 0)
  now[RECEIVED_AT] = now[ARRIVES_AT]!
  startRuns(program, memory, step, WAITING, now[ARRIVES_AT]!)
  if (flight === SHOT) return hitTarget(program, memory, step, stops)
  sendReceiver(program, memory, step)
  const off = offSquared(now[AT_X]! - now[PLAN_X]!, now[AT_Y]! - now[PLAN_Y]!)
  const near = squareOf(program.reachWithStep)
  if (isOut(program, now[AT_X]!, now[AT_Y]!)) return OUT
  // Too short as it was meant, or further from its place than anyone goes for it; a ball that lies can be gone for.
  if (offSquared(now[PLAN_X]! - goalX, now[PLAN_Y]! - goalY) > near) return SHORT
  if (stops && off > squareOf(program.chaseMax)) return SHORT
  if (program.letThrough[step] === 1) return stops ? SHORT : KEPT
  if (!stops && off > near) return MISSED
  return meetRoll(program, memory, Math.sqrt(off), stops)
}

function squareOf(length: number): number {
  return length * length
}

function offSquared(dx: number, dy: number): number {
  return dx * dx + dy * dy
}

function hitTarget(program: Program, memory: Memory, step: number, stops: boolean): number {
  const { now } = memory
  if (stops) return SHORT
  const off = offSquared(now[AT_X]! - now[PLAN_X]!, now[AT_Y]! - now[PLAN_Y]!)
  return off > squareOf(program.shotHalfWidth[step]!) ? MISSED : KEPT
}

/** The receiver waits for the ball, steps to it, or is late and goes after it. */
function meetRoll(program: Program, memory: Memory, off: number, stops: boolean): number {
  const { now } = memory
  const ready = readyAt(program, memory, off)
  if (ready <= now[ARRIVES_AT]!) return KEPT
  if (stops) {
    now[RECEIVED_AT] = ready
    return KEPT
  }
  const beyond = runAfter(program, memory, ready)
  if (isOut(program, now[AT_X]!, now[AT_Y]!)) return OUT
  return beyond > program.chaseMax ? MISSED : KEPT
}

/** A late receiver takes the ball as it rolls on, or runs after it. Sets where and when; returns how far beyond. */
function runAfter(program: Program, memory: Memory, ready: number): number {
  const { now } = memory
  const { deceleration } = program
  const speed = now[SPEED_THERE]!
  const late = ready - now[ARRIVES_AT]!
  const stopsAfter = speed / deceleration
  const free = Math.min(late, stopsAfter)
  const passed = speed * free - (deceleration * free * free) / 2
  const left = speed - deceleration * free
  const gap = passed - program.reach
  const chased = gap > 0 ? chaseSeconds(program, gap, left) : 0
  const rolling = left / deceleration
  const on = Math.min(chased, rolling)
  const beyond = passed + left * on - (deceleration * on * on) / 2
  now[AT_X]! += now[UNIT_X]! * beyond
  now[AT_Y]! += now[UNIT_Y]! * beyond
  now[SPEED_THERE] = left - deceleration * on
  now[RECEIVED_AT] = ready + chased
  return beyond
}
