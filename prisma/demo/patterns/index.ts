import { carryUntilOneComes } from './carry-until-one-comes'
import { roundTheBack } from './round-the-back'
import { wallOnTheRight } from './wall-on-the-right'

export { carryUntilOneComes, roundTheBack, wallOnTheRight }

/** The demo club's patterns: invented, written for this product, none copied from anywhere. */
export const DEMO_PATTERNS = [wallOnTheRight, roundTheBack, carryUntilOneComes] as const
