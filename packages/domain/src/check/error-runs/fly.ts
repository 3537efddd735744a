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
import { FLIES, type Program, WAITING } from './program'
import { isOut, readyAt, sendReceiver } from './reception'
import { startRuns } from './run-starts'
import { strikeBall } from './strike'

/**
 * Plays a ball through the air and finds whether and when it is met, opponents apart. Where it lands it is met, and waits
 * for who is late; while it flies there is time to run further than the step a rolling ball allows.
 */
export function flyErredBall(program: Program, memory: Memory, step: number, goalX: number, goalY: number): number {
  const { now } = memory
  strikeBall(program, memory, step, FLIES, goalX, goalY)
  const flown = (now[RELEASE]! * now[RELEASE]!) / program.gravity
  now[AT_X] = now[FROM_X]! + now[UNIT_X]! * flown
  now[AT_Y] = now[FROM_Y]! + now[UNIT_Y]! * flown
  now[ARRIVES_AT] = now[STARTS_AT]! + Math.sqrt((2 * flown) / program.gravity)
  now[SPEED_THERE] = Math.sqrt((program.gravity * flown) / 2)
  now[RECEIVED_AT] = now[ARRIVES_AT]!
  startRuns(program, memory, step, WAITING, now[ARRIVES_AT]!)
  sendReceiver(program, memory, step)
  const shortX = goalX - now[PLAN_X]!
  const shortY = goalY - now[PLAN_Y]!
  if (isOut(program, now[AT_X]!, now[AT_Y]!)) return OUT
  if (shortX * shortX + shortY * shortY > program.reachWithStep * program.reachWithStep) return SHORT
  if (program.letThrough[step] === 1) return KEPT
  const offX = now[AT_X]! - now[PLAN_X]!
  const offY = now[AT_Y]! - now[PLAN_Y]!
  const off = Math.sqrt(offX * offX + offY * offY)
  if (off > program.chaseMax) return MISSED
  const ready = readyAt(program, memory, off)
  if (ready > now[RECEIVED_AT]!) now[RECEIVED_AT] = ready
  return KEPT
}
