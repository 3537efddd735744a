import { along, attribute, directionTo, gapBetween, offset, type PaperPoint, pathPlace } from './paper-point'

/** A path as drawn: from where it leaves to its tip, straight or bowed through one control point. */
export type Shaft = {
  readonly start: PaperPoint
  readonly control: PaperPoint | null
  readonly tip: PaperPoint
}

/** How wide a head is for its length. */
const HEAD_WIDTH = 0.84

/** What stays of a short way: a path is never shortened to less than this share, else it could turn round. */
const LEAST_SHARE = 0.3

/**
 * The shaft from one place to another, kept `leaving` metres clear of the first and `reaching` clear of the second.
 * `bow` bends it aside by that share of its length, to the right where positive: how a ball in the air is drawn.
 */
export function shaftBetween(from: PaperPoint, to: PaperPoint, leaving: number, reaching: number, bow = 0): Shaft {
  const length = gapBetween(from, to)
  const direction = directionTo(from, to)
  const clear = leaving + reaching
  const factor = clear > 0 ? Math.min(1, (length * (1 - LEAST_SHARE)) / clear) : 1
  const start = offset(from, direction, leaving * factor)
  const tip = offset(to, direction, -reaching * factor)
  const control = bow === 0 ? null : offset(along(start, tip, 0.5), direction, 0, bow * length * 2)
  return { start, control, tip }
}

/** The direction in which the shaft arrives at its tip. */
export function arrivalOf({ start, control, tip }: Shaft): PaperPoint {
  return directionTo(control ?? start, tip)
}

/** The place a share of the way along a shaft. */
export function placeOnShaft({ start, control, tip }: Shaft, share: number): PaperPoint {
  if (control === null) return along(start, tip, share)
  return along(along(start, control, share), along(control, tip, share), share)
}

/** The shaft ended `short` metres before its tip, where a filled head takes over. */
export function shaftPath(shaft: Shaft, short: number): string {
  const end = offset(shaft.tip, arrivalOf(shaft), -short)
  const to = shaft.control === null ? `L${pathPlace(end)}` : `Q${pathPlace(shaft.control)} ${pathPlace(end)}`
  return `M${pathPlace(shaft.start)}${to}`
}

/** A filled head: the ball always has one. Its back is notched, so that it reads as a head when small. */
export function filledHead(tip: PaperPoint, direction: PaperPoint, length: number): string {
  const half = (length * HEAD_WIDTH) / 2
  const left = offset(tip, direction, -length, -half)
  const right = offset(tip, direction, -length, half)
  const notch = offset(tip, direction, -length * 0.7)
  return `M${pathPlace(tip)}L${pathPlace(left)}L${pathPlace(notch)}L${pathPlace(right)}Z`
}

/** An open head: a body always has one. */
export function openHead(tip: PaperPoint, direction: PaperPoint, length: number): string {
  const half = (length * HEAD_WIDTH) / 2
  const left = offset(tip, direction, -length, -half)
  const right = offset(tip, direction, -length, half)
  return `M${pathPlace(left)}L${pathPlace(tip)}L${pathPlace(right)}`
}

/** Two lines side by side: a shot. */
export function doublePath(shaft: Shaft, apart: number, short: number): string {
  const direction = arrivalOf(shaft)
  return [-apart / 2, apart / 2]
    .map((aside) => {
      const start = offset(shaft.start, direction, 0, aside)
      const end = offset(shaft.tip, direction, -short, aside)
      return `M${pathPlace(start)}L${pathPlace(end)}`
    })
    .join('')
}

/** Lines as one path, for washes under what is being read. */
export function linePath(places: readonly PaperPoint[]): string {
  return places.map((place, index) => `${index === 0 ? 'M' : 'L'}${pathPlace(place)}`).join('')
}

/** An SVG `points` attribute. */
export function pointsAttribute(places: readonly PaperPoint[]): string {
  return places.map(({ x, y }) => `${attribute(x)},${attribute(y)}`).join(' ')
}
