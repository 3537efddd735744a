import { cosineOf, sineOf } from './deviates'
import {
  DEVIATE,
  drawDeviate,
  FROM_X,
  FROM_Y,
  type Memory,
  PLAN_X,
  PLAN_Y,
  RELEASE,
  SINE,
  SPEED_THERE,
  UNIT_X,
  UNIT_Y,
} from './memory'
import { FLIES, type Program, ROLLS_ON, SHOT } from './program'
import { DIRECTION, SPEED } from './quantities-erred'

/**
 * Strikes the ball towards a place: sets where it was to be met, its way and its speed with their errors. Returns how far
 * along its erred way it comes nearest to where it was to be met.
 */
export function strikeBall(
  program: Program,
  memory: Memory,
  step: number,
  flight: number,
  goalX: number,
  goalY: number,
): number {
  const { now } = memory
  const dx = goalX - now[FROM_X]!
  const dy = goalY - now[FROM_Y]!
  const length = Math.sqrt(dx * dx + dy * dy)
  // Between two players in one place any direction will do.
  const unitX = length > 0 ? dx / length : 1
  const unitY = length > 0 ? dy / length : 0
  const meant = meantReach(program, memory, step, flight, length)
  const planned = Math.min(length, meant)
  now[PLAN_X] = now[FROM_X]! + unitX * planned
  now[PLAN_Y] = now[FROM_Y]! + unitY * planned
  // A ball let through is struck by nobody: it keeps its speed, and goes as wide as it came.
  if (flight !== ROLLS_ON) errBall(program, memory, step)
  const sine = now[SINE]!
  const cosine = cosineOf(sine)
  now[UNIT_X] = unitX * cosine - unitY * sine
  now[UNIT_Y] = unitX * sine + unitY * cosine
  return planned * cosine
}

/** Sets the speed meant; returns how far a ball of that speed goes. Nobody plays faster than they can. */
function meantReach(program: Program, memory: Memory, step: number, flight: number, length: number): number {
  const { now } = memory
  const most = program.speedMax[step]!
  if (flight === FLIES) {
    const wanted = Math.sqrt(program.gravity * length)
    now[RELEASE] = Math.min(wanted, most)
    return wanted < most ? length : (most * most) / program.gravity
  }
  const { deceleration } = program
  if (flight === ROLLS_ON) now[RELEASE] = now[SPEED_THERE]!
  else if (flight === SHOT) now[RELEASE] = most
  else {
    const arrival = program.arrivalSpeed[step]!
    const wanted = Math.sqrt(arrival * arrival + 2 * deceleration * length)
    if (wanted <= most) {
      now[RELEASE] = wanted
      return length
    }
    now[RELEASE] = most
  }
  return (now[RELEASE]! * now[RELEASE]!) / (2 * deceleration)
}

function errBall(program: Program, memory: Memory, step: number): void {
  const { now } = memory
  const direction = program.directionSpread[step]! * program.side
  drawDeviate(memory, step, DIRECTION)
  now[SINE] = sineOf(direction * now[DEVIATE]!)
  const spread = program.speedSpread[step]!
  if (spread === 0) return
  drawDeviate(memory, step, SPEED)
  const times = 1 + spread * now[DEVIATE]!
  const speed = times > 0 ? now[RELEASE]! * times : 0
  const most = program.speedMax[step]!
  now[RELEASE] = Math.min(speed, most)
}
