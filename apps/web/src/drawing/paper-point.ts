import { type Point, point } from '@espalier/domain/geometry'

/** A place on the drawing, in metres: `x` to the right, `y` down, so that the team attacks up the page. */
export type PaperPoint = { readonly x: number; readonly y: number }

/** From the pitch frame (up the pitch, right as the team attacks) to the page. */
export function toPaper(place: Point): PaperPoint {
  return { x: place.y, y: place.x === 0 ? 0 : -place.x }
}

/** Back from the page to the pitch frame. */
export function toPitch(place: PaperPoint): Point {
  return point(-place.y, place.x)
}

/** From stored millimetres to the page. */
export function toPaperMm(upMm: number, rightMm: number): PaperPoint {
  return { x: rightMm / 1000, y: upMm === 0 ? 0 : -upMm / 1000 }
}

export function gapBetween(a: PaperPoint, b: PaperPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

/** The place a share of the way from a to b. */
export function along(a: PaperPoint, b: PaperPoint, share: number): PaperPoint {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share }
}

/** The direction from a to b with length 1; straight up the page where they are the same place. */
export function directionTo(a: PaperPoint, b: PaperPoint): PaperPoint {
  const gap = gapBetween(a, b)
  return gap === 0 ? { x: 0, y: -1 } : { x: (b.x - a.x) / gap, y: (b.y - a.y) / gap }
}

/** `forward` metres along a direction and `aside` metres to its right. */
export function offset(from: PaperPoint, direction: PaperPoint, forward: number, aside = 0): PaperPoint {
  return {
    x: from.x + direction.x * forward - direction.y * aside,
    y: from.y + direction.y * forward + direction.x * aside,
  }
}

/** A number as an SVG attribute: centimetres are finer than any screen or printer shows. */
export function attribute(value: number): string {
  const rounded = Math.round(value * 100) / 100
  return String(rounded === 0 ? 0 : rounded)
}

/** A place as path data. */
export function pathPlace({ x, y }: PaperPoint): string {
  return `${attribute(x)} ${attribute(y)}`
}
