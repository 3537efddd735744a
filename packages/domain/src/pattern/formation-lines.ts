import type { Landmark } from '../pitch'
import type { Position } from './document'

/** A position, its landmark, and the offset in metres up the pitch and to the right. */
export type LinePlace = readonly [position: Position, landmark: Landmark, up: number, right: number]
type Line = readonly LinePlace[]

/** The same place on both sides, the left one first. */
function pair(
  role: string,
  landmark: 'corner' | 'halfway' | 'build-out-line' | 'penalty-area-corner',
  up: number,
  inward: number,
): Line {
  return [
    [`L${role}`, `${landmark}-left`, up, inward],
    [`R${role}`, `${landmark}-right`, up, -inward],
  ]
}

/** Two places either side of the middle. */
function apart(role: string, landmark: Landmark, up: number, outward: number): Line {
  return [
    [`L${role}`, landmark, up, -outward],
    [`R${role}`, landmark, up, outward],
  ]
}

/** From left to right, with one in the middle. */
function around(line: Line, middle: LinePlace): Line {
  return [line[0]!, middle, line[1]!]
}

const keeper: Line = [['GK', 'goal-centre', 2, 0]]

export const LINES_7V7 = {
  keeper,
  twoBacks: pair('CB', 'penalty-area-corner', 0, 2),
  threeBacks: around(pair('B', 'build-out-line', -5, 2), ['CB', 'penalty-area-top', -2, 0]),
  wideThree: around(pair('W', 'build-out-line', 0, 1.5), ['CM', 'penalty-arc-top', 0, 0]),
  wideTwo: pair('W', 'halfway', -4, 1.5),
  pivot: [['CM', 'penalty-arc-top', 0, 0]] as Line,
  twoMidfielders: apart('CM', 'build-out-line-centre', 3, 6),
  striker: [['ST', 'far-build-out-line-centre', -3, 0]] as Line,
  twoForwards: apart('F', 'centre-mark', 5, 6),
} as const

export const LINES_9V9 = {
  keeper,
  twoBacks: pair('CB', 'penalty-area-corner', 0, 5),
  threeBacks: around(pair('B', 'penalty-area-corner', 3, -2), ['CB', 'penalty-area-top', -3, 0]),
  wideThree: around(pair('M', 'halfway', -8, 2), ['CM', 'penalty-arc-top', 2, 0]),
  pivot: [['DM', 'penalty-arc-top', 3, 0]] as Line,
  twoMidfielders: apart('CM', 'penalty-arc-top', 6, 6),
  threeMidfielders: around(pair('M', 'halfway', -5, 2), ['CM', 'penalty-arc-top', 4, 0]),
  fourMidfielders: [...pair('M', 'halfway', -5, 2), ...apart('CM', 'penalty-arc-top', 6, 5)] as Line,
  highThree: around(pair('M', 'halfway', 0, 2), ['CM', 'centre-mark', -3, 0]),
  twoHigh: apart('AM', 'centre-mark', 1, 7),
  threeForwards: around(pair('W', 'halfway', 4, 2), ['ST', 'centre-mark', 12, 0]),
  twoForwards: apart('F', 'centre-mark', 9, 6),
  striker: [['ST', 'centre-mark', 12, 0]] as Line,
} as const

const centreBacks = pair('CB', 'penalty-area-corner', -4, 1)

export const LINES_11V11 = {
  keeper: [['GK', 'goal-centre', 4, 0]] as Line,
  fourBacks: [...pair('B', 'halfway', -22, 4), ...centreBacks] as Line,
  threeBacks: around(centreBacks, ['CB', 'penalty-area-top', -4, 0]),
  pivot: [['DM', 'penalty-arc-top', 3, 0]] as Line,
  pivotAndTwo: [['DM', 'penalty-arc-top', 3, 0], ...apart('CM', 'centre-mark', -14, 10)] as Line,
  twoPivots: apart('DM', 'penalty-arc-top', 4, 6),
  fourMidfielders: [...pair('M', 'halfway', -10, 4), ...apart('CM', 'penalty-arc-top', 6, 8)] as Line,
  fiveMidfielders: [
    ...pair('M', 'halfway', -10, 4),
    ['DM', 'penalty-arc-top', 3, 0],
    ...apart('CM', 'centre-mark', -12, 10),
  ] as Line,
  highThree: around(pair('W', 'halfway', 4, 5), ['AM', 'centre-mark', -2, 0]),
  highFour: [...pair('W', 'halfway', 0, 5), ...apart('CM', 'centre-mark', -6, 8)] as Line,
  threeForwards: around(pair('W', 'halfway', 8, 5), ['ST', 'centre-mark', 18, 0]),
  twoForwards: apart('F', 'centre-mark', 16, 7),
  striker: [['ST', 'centre-mark', 18, 0]] as Line,
} as const
