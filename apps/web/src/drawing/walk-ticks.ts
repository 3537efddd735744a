import { directionTo, gapBetween, offset, type PaperPoint, pathPlace } from './paper-point'

const SHORT = 0.35
const LONG = 0.75

/** A leg's line with one tick a pace and a longer one every fifth, counted from where the leg starts. */
export function walkPath(from: PaperPoint, to: PaperPoint, paces: number): string {
  const direction = directionTo(from, to)
  const length = gapBetween(from, to)
  const ticks = Array.from({ length: paces }, (_, index) => {
    const half = (index + 1) % 5 === 0 ? LONG : SHORT
    const at = ((index + 1) / paces) * length
    return `M${pathPlace(offset(from, direction, at, -half))}L${pathPlace(offset(from, direction, at, half))}`
  })
  return `M${pathPlace(from)}L${pathPlace(to)}${ticks.join('')}`
}
