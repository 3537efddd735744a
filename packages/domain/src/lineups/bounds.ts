import { assert } from '../quantities'

/** How evenly blocks could be shared if every child could play everywhere: whole numbers, by the pigeonhole principle. */
export type BestShare = {
  readonly least: number
  readonly most: number
  readonly childrenWithMost: number
  /** The fewest blocks after which all can have played equally often, and how often that is. */
  readonly blocksUntilEqual: number
  readonly eachWhenEqual: number
}

export function bestShare(children: number, positions: number, blocks: number): BestShare {
  assert(children >= positions && positions > 0 && blocks >= 0, 'there must be a child for each position')
  const slots = positions * blocks
  const least = Math.floor(slots / children)
  const above = slots - least * children
  const divisor = greatestCommonDivisor(children, positions)
  return {
    least,
    most: above === 0 ? least : least + 1,
    childrenWithMost: above === 0 ? children : above,
    blocksUntilEqual: children / divisor,
    eachWhenEqual: positions / divisor,
  }
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
