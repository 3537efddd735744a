import { type Millimetres, metres, metresFromYards, millimetres, millimetresOf } from '../quantities'
import type { MarkedArea, Range } from './format'

/** Laws printed in metres: exact to the millimetre. */
export function fromMetres(value: number): Millimetres {
  return millimetresOf(metres(value))
}

/** Laws printed in yards, rounded once to the nearest millimetre. */
export function fromYards(value: number): Millimetres {
  return millimetresOf(metresFromYards(value))
}

/** One foot is a third of a yard: exactly 304.8 mm. */
export function fromFeet(value: number): Millimetres {
  return millimetres(Math.round(value * 304.8))
}

export function rangeInYards(least: number, most: number): Range {
  return { minMm: fromYards(least), maxMm: fromYards(most) }
}

export function areaInYards(depth: number, width: number): MarkedArea {
  return { depthMm: fromYards(depth), widthMm: fromYards(width) }
}
