import { FROM_X, FROM_Y, type Memory, RELEASE, UNIT_X, UNIT_Y } from './memory'
import type { Program } from './program'

/**
 * Whether an opponent drawn gets to a rolling ball no later than it is there, anywhere on its way up to `window` seconds
 * after it left; where it has stopped before, it lies. An opponent stands where it is drawn, reacts, and then reaches
 * everything within a disc that grows with its top speed: the margin of `rollingLaneMargin`, of which only the sign counts.
 */
export function opponentMeetsRoll(program: Program, memory: Memory, window: number): boolean {
  const { now } = memory
  const fromX = now[FROM_X]!
  const fromY = now[FROM_Y]!
  const unitX = now[UNIT_X]!
  const unitY = now[UNIT_Y]!
  const release = now[RELEASE]!
  const { deceleration, reaction, reach, topSpeed } = program
  if (window < reaction) return false
  const stopsAfter = release / deceleration
  const moving = Math.min(window, stopsAfter)
  const rolled = release * moving - (deceleration * moving * moving) / 2
  const disc = reach + topSpeed * (window - reaction)
  for (let opponent = 0; opponent < program.opponents; opponent += 1) {
    const dx = program.opponentX[opponent]! - fromX
    const dy = program.opponentY[opponent]! - fromY
    const along = dx * unitX + dy * unitY
    const across = dx * unitY - dy * unitX
    const offSquared = across * across
    const nearest = along < 0 ? 0 : Math.min(along, rolled)
    const beside = along - nearest
    // Out of reach even if they ran all the time straight to the nearest place of the way.
    if (beside * beside + offSquared > disc * disc) continue
    const behind = along - rolled
    if (behind * behind + offSquared <= disc * disc) return true
    if (moving >= reaction && meetsInside(program, release, moving, along, offSquared)) return true
  }
  return false
}

/** Newton's rule doubles its digits at every turn; the limit is only there so that nothing can go on for ever. */
const TURNS_MAX = 60

/**
 * Whether the disc catches up with the moving ball between the reaction and `end`, where it does not have it at the end.
 * With g = distance² − radius² (a quartic of time): half its second derivative, 1½v² − ½v₀² + a·x − w², falls as the ball
 * slows, so g first bends up, then down. Where it bends down its least value is at an end; where it bends up its slope is
 * concave, and Newton's rule from the left comes to the lowest place from the left without stepping over it.
 */
function meetsInside(program: Program, release: number, end: number, along: number, offSquared: number): boolean {
  const { deceleration: a, reaction, reach, topSpeed } = program
  const offset = reach - topSpeed * reaction
  const curveAtRest = a * along - (release * release) / 2 - topSpeed * topSpeed
  let at = reaction
  for (let turn = 0; turn < TURNS_MAX; turn += 1) {
    const ahead = along - release * at + (a * at * at) / 2
    const radius = offset + topSpeed * at
    if (ahead * ahead + offSquared - radius * radius <= 0) return true
    const speed = release - a * at
    const curve = 1.5 * speed * speed + curveAtRest
    const slope = -ahead * speed - radius * topSpeed
    if (slope >= 0 || curve <= 0) return false
    const next = at - slope / curve
    if (!(next > at) || next >= end) return false
    at = next
  }
  return false
}

/** The same for a ball in the air or one that bounced off a foot: only where it comes down can they be first. */
export function opponentMeetsAt(program: Program, x: number, y: number, window: number): boolean {
  if (window < program.reaction) return false
  const disc = program.reach + program.topSpeed * (window - program.reaction)
  for (let opponent = 0; opponent < program.opponents; opponent += 1) {
    const dx = program.opponentX[opponent]! - x
    const dy = program.opponentY[opponent]! - y
    if (dx * dx + dy * dy <= disc * disc) return true
  }
  return false
}
