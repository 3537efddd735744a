import { type FormatId, formatOf } from '../formats'
import type { Landmark } from '../pitch'
import { habit, type Millimetres, millimetres, type Sourced } from '../quantities'
import type { PlacedPosition } from './document'
import { LINES_7V7, LINES_9V9, LINES_11V11, type LinePlace } from './formation-lines'

/** The formations a form offers for a format, in the order the format lists them; each has starting places. */
export function formationsOf(formatId: FormatId): readonly string[] {
  const shapes: Readonly<Record<string, Shape>> = SHAPES[formatId]
  return formatOf(formatId).formations.value.filter((formation) => shapes[formation] !== undefined)
}

/**
 * Where players start in a build-out, as a TD would draw it first: a form begins from these places and moves them.
 * Common practice, no source: centre backs wide of the goal at the top of the penalty area, wide players at the touchline
 * (in U.S. 7v7 where the build-out line meets it), a midfielder by the arc, the striker high. Null where none is written.
 */
export function startingPositions(formatId: FormatId, formation: string): Sourced<readonly PlacedPosition[]> | null {
  const shapes: Readonly<Record<string, Shape>> = SHAPES[formatId]
  const shape = shapes[formation]
  return shape === undefined ? null : habit(shape.flat().map(placedAt))
}

type Shape = readonly (readonly LinePlace[])[]

const S = LINES_7V7
const N = LINES_9V9
const E = LINES_11V11

const SHAPES = {
  'us-7v7': {
    '2-3-1': [S.keeper, S.twoBacks, S.wideThree, S.striker],
    '3-2-1': [S.keeper, S.threeBacks, S.twoMidfielders, S.striker],
    '2-1-2-1': [S.keeper, S.twoBacks, S.pivot, S.wideTwo, S.striker],
    '3-1-2': [S.keeper, S.threeBacks, S.pivot, S.twoForwards],
    '2-2-2': [S.keeper, S.twoBacks, S.twoMidfielders, S.twoForwards],
  },
  'us-9v9': {
    '3-2-3': [N.keeper, N.threeBacks, N.twoMidfielders, N.threeForwards],
    '3-3-2': [N.keeper, N.threeBacks, N.threeMidfielders, N.twoForwards],
    '3-1-3-1': [N.keeper, N.threeBacks, N.pivot, N.highThree, N.striker],
    '2-3-2-1': [N.keeper, N.twoBacks, N.wideThree, N.twoHigh, N.striker],
    '3-4-1': [N.keeper, N.threeBacks, N.fourMidfielders, N.striker],
  },
  'ifab-11v11': {
    '4-3-3': [E.keeper, E.fourBacks, E.pivotAndTwo, E.threeForwards],
    '4-4-2': [E.keeper, E.fourBacks, E.fourMidfielders, E.twoForwards],
    '4-2-3-1': [E.keeper, E.fourBacks, E.twoPivots, E.highThree, E.striker],
    '4-1-4-1': [E.keeper, E.fourBacks, E.pivot, E.highFour, E.striker],
    '3-5-2': [E.keeper, E.threeBacks, E.fiveMidfielders, E.twoForwards],
    '3-4-3': [E.keeper, E.threeBacks, E.fourMidfielders, E.threeForwards],
  },
} as const satisfies Record<FormatId, Readonly<Record<string, Shape>>>

function placedAt([position, landmark, up, right]: LinePlace): PlacedPosition {
  return { position, spot: { landmark: landmark satisfies Landmark, upMm: mm(up), rightMm: mm(right) } }
}

function mm(lengthMetres: number): Millimetres {
  return millimetres(Math.round(lengthMetres * 1000))
}
