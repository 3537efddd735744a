import { distance, type Point } from '../../geometry'
import { assert, millimetresOf } from '../../quantities'
import type { CoverRules } from './cover-rules'
import type { PlaceGrid } from './place-grid'
import type { LookScene } from './scene'
import { shutsFrom } from './shut-places'
import { type Presser, presserFrom, SIGN_RULES } from './signs'

/**
 * What a placement of X does to a look, in one whole number: a bit for each way it shuts, a bit for each answer whose sign
 * counts an X, and a second bit where the sign needs to know of a second X. Two placements together are their bits together.
 */
export type LookState = number

export type LookLogic = {
  /** With no X anywhere: what stops short is shut by itself. */
  readonly base: LookState
  readonly merge: (one: LookState, other: LookState) => LookState
  /** The way taken, as an index into the ways, or null for a hole. */
  readonly taken: (state: LookState, presser: Presser | null) => number | null
  readonly isOpen: (state: LookState, way: number) => boolean
  /** What one X does from each place of the grid, before it is merged with the base. */
  readonly states: Int32Array
  /** Which way an X at each place presses; null all over where no sign asks. */
  readonly pressers: readonly (Presser | null)[]
  /** How far each place is from the player on the ball, as a rank; of two X the one of lower rank presses. */
  readonly nearness: readonly number[]
}

/** Three groups of bits of one whole number: the ways shut, an X counted for their sign, a second one. */
const WAYS_MAX = 10

export function lookLogic(scene: LookScene, rules: CoverRules, grid: PlaceGrid): LookLogic {
  const { ways } = scene
  const width = ways.length
  assert(width <= WAYS_MAX, `a look has at most ${WAYS_MAX - 1} answers`)
  const asked = ways.map((way) => way.answer)
  const shutBit = (way: number) => 1 << way
  const countBit = (way: number) => 1 << (width + way)
  const bitsWhere = (bitOf: (way: number) => number, isSet: (way: number) => boolean) =>
    ways.reduce((bits, _, way) => (isSet(way) ? bits | bitOf(way) : bits), 0)
  // Only two on one asks for a second X; for the others it would only tell alike states apart.
  const twice = bitsWhere(countBit, (way) => asked[way]?.sign === 'two-on-one')
  const isOpen = (state: LookState, way: number) => (state & shutBit(way)) === 0
  const shows = (state: LookState, presser: Presser | null, way: number) => {
    const sign = asked[way]?.sign
    if (sign === undefined) return true
    const counted = (state & (countBit(way) << width)) !== 0 ? 2 : (state & countBit(way)) !== 0 ? 1 : 0
    return SIGN_RULES[sign].shows({ presser, counted })
  }
  return {
    base: bitsWhere(shutBit, (way) => !ways[way]!.arrives),
    merge: (one, other) => one | other | ((one & other & twice) << width),
    isOpen,
    taken: (state, presser) => {
      const way = ways.findIndex((_, index) => isOpen(state, index) && shows(state, presser, index))
      return way < 0 ? null : way
    },
    states: statesOf(scene, rules, grid, countBit),
    ...pressersOf(scene, rules, grid),
  }
}

function statesOf(scene: LookScene, rules: CoverRules, grid: PlaceGrid, countBit: (way: number) => number): Int32Array {
  const states = new Int32Array(grid.length)
  const mark = (bit: number, counts: (at: Point) => boolean) => {
    grid.forEach(({ at }, index) => {
      if (counts(at)) states[index]! |= bit
    })
  }
  scene.ways.forEach((way, index) => {
    for (const ball of way.balls) mark(1 << index, shutsFrom(ball, rules))
    if (way.answer === null) return
    const { sign, about } = way.answer
    const counts = SIGN_RULES[sign].counts
    if (counts !== null) mark(countBit(index), counts(scene, about, rules))
  })
  return states
}

function pressersOf(scene: LookScene, rules: CoverRules, grid: PlaceGrid): Pick<LookLogic, 'pressers' | 'nearness'> {
  const signs = scene.ways.map((way) => way.answer?.sign)
  const isAsked = signs.includes('presser-from-inside') || signs.includes('presser-from-outside')
  const pressers = grid.map(({ at }) => (isAsked ? presserFrom(scene, at, rules) : null))
  const nearness = pressers.map((presser, index) => nearnessOf(scene.looker, grid[index]!.at, presser))
  return { pressers, nearness }
}

const PRESSER_ORDER = { inside: 0, outside: 1, straight: 2 } satisfies Record<Presser, number>

/** Whole millimetres first; of two equally near the one from inside counts, as they shut more. Too far to press: last. */
function nearnessOf(looker: Point, place: Point, presser: Presser | null): number {
  if (presser === null) return Number.POSITIVE_INFINITY
  return millimetresOf(distance(looker, place)) * 3 + PRESSER_ORDER[presser]
}
