import type { Obstacle, PatternDocument } from '../pattern'
import type { Metres, Seconds } from '../quantities'

/** A walking pace for the reader's picture of a distance (habit: common practice, no source). */
const PACE_METRES = 0.75

/** As "3.2 m (4 paces)". */
export function sayMetres(length: Metres): string {
  const paces = Math.max(1, Math.round(length / PACE_METRES))
  return `${tenths(length)} m (${paces} ${paces === 1 ? 'pace' : 'paces'})`
}

export function saySeconds(duration: Seconds): string {
  return `${tenths(duration)} s`
}

function tenths(value: number): string {
  return String(Math.round(value * 10) / 10)
}

/** As "pole 2", counted among its kind in the order drawn; the only one of its kind goes without a number. */
export function nameObstacle(document: PatternDocument, obstacle: Obstacle): string {
  const alike = document.obstacles.filter((each) => each.kind === obstacle.kind)
  return alike.length < 2 ? obstacle.kind : `${obstacle.kind} ${alike.indexOf(obstacle) + 1}`
}
