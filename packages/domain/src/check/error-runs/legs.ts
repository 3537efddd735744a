import { type Memory, PLACE_X, PLACE_Y } from './memory'
import type { Program } from './program'

/** Time to run a length from rest: bounded acceleration, then top speed. */
export function runSeconds(acceleration: number, topSpeed: number, length: number): number {
  const ramp = (topSpeed * topSpeed) / (2 * acceleration)
  return length <= ramp ? Math.sqrt((2 * length) / acceleration) : length / topSpeed + topSpeed / (2 * acceleration)
}

/** Length run from rest after a time. */
function runMetres(acceleration: number, topSpeed: number, elapsed: number): number {
  return elapsed <= topSpeed / acceleration
    ? (acceleration * elapsed * elapsed) / 2
    : topSpeed * elapsed - (topSpeed * topSpeed) / (2 * acceleration)
}

/** Where a player is at a time; a leg that starts while another lasts cuts it short. */
export function locate(program: Program, memory: Memory, player: number, at: number): void {
  const { now } = memory
  const base = player * program.legsMax
  let leg = base + memory.legCount[player]! - 1
  while (leg >= base && memory.legStart[leg]! > at) leg -= 1
  if (leg < base) {
    now[PLACE_X] = program.startX[player]!
    now[PLACE_Y] = program.startY[player]!
    return
  }
  const length = memory.legLength[leg]!
  if (at >= memory.legEnd[leg]! || length === 0) {
    now[PLACE_X] = memory.legToX[leg]!
    now[PLACE_Y] = memory.legToY[leg]!
    return
  }
  const run = runMetres(program.acceleration, memory.legSpeed[leg]!, at - memory.legStart[leg]!)
  const share = run >= length ? 1 : run / length
  now[PLACE_X] = memory.legFromX[leg]! + (memory.legToX[leg]! - memory.legFromX[leg]!) * share
  now[PLACE_Y] = memory.legFromY[leg]! + (memory.legToY[leg]! - memory.legFromY[leg]!) * share
}

/** Where a player is going, or stands for good. */
export function destine(program: Program, memory: Memory, player: number): void {
  const { now } = memory
  const count = memory.legCount[player]!
  const leg = player * program.legsMax + count - 1
  now[PLACE_X] = count === 0 ? program.startX[player]! : memory.legToX[leg]!
  now[PLACE_Y] = count === 0 ? program.startY[player]! : memory.legToY[leg]!
}

/** When the player is there. */
export function settledAt(program: Program, memory: Memory, player: number): number {
  const count = memory.legCount[player]!
  return count === 0 ? 0 : memory.legEnd[player * program.legsMax + count - 1]!
}

/** Adds a run, not before the run before it started; a run to where the player already goes adds nothing. */
export function addLeg(
  program: Program,
  memory: Memory,
  player: number,
  toX: number,
  toY: number,
  at: number,
  topSpeed: number,
): void {
  const { now } = memory
  destine(program, memory, player)
  if (now[PLACE_X]! === toX && now[PLACE_Y]! === toY) return
  const count = memory.legCount[player]!
  const leg = player * program.legsMax + count
  const last = count === 0 ? 0 : memory.legStart[leg - 1]!
  const start = Math.max(at, last)
  locate(program, memory, player, start)
  const dx = toX - now[PLACE_X]!
  const dy = toY - now[PLACE_Y]!
  const length = Math.sqrt(dx * dx + dy * dy)
  memory.legStart[leg] = start
  memory.legEnd[leg] = start + runSeconds(program.acceleration, topSpeed, length)
  memory.legFromX[leg] = now[PLACE_X]!
  memory.legFromY[leg] = now[PLACE_Y]!
  memory.legToX[leg] = toX
  memory.legToY[leg] = toY
  memory.legLength[leg] = length
  memory.legSpeed[leg] = topSpeed
  memory.legCount[player] = count + 1
}

/** The player stands there from now on: where they took the ball. */
export function stand(program: Program, memory: Memory, player: number, x: number, y: number, at: number): void {
  const count = memory.legCount[player]!
  const leg = player * program.legsMax + count
  memory.legStart[leg] = at
  memory.legEnd[leg] = at
  memory.legFromX[leg] = x
  memory.legFromY[leg] = y
  memory.legToX[leg] = x
  memory.legToY[leg] = y
  memory.legLength[leg] = 0
  memory.legSpeed[leg] = program.topSpeed
  memory.legCount[player] = count + 1
}
