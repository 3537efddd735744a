import type { LineupChild, LineupPlan, PositionPreference } from '../lineups'
import { solveLineups } from '../lineups'
import { GOALKEEPER, type Position } from '../pattern'
import type { Side } from '../pitch'
import { assert, compareIds } from '../quantities'
import type { Child } from './who-came'

/** A child has at most so many positions in an evening. */
const POSITIONS_MAX = 3

export type SolvedLineups = {
  readonly lineups: LineupPlan
  /** Positions that home and stretch alone could not fill: others stand in. */
  readonly lacking: readonly Position[]
}

type Choice = { readonly position: Position; readonly preference: PositionPreference }
type Sets = readonly { readonly child: Child; readonly choices: readonly Choice[] }[]

/**
 * Line-ups by the children's own positions. Home and stretch come first; a child who has neither, or whose positions are not
 * on the field tonight, gets those that fewest others cover. Where the solver still lacks players for a position, others stand
 * in, fewest positions first, and the position is named. `positions` must be no more than the children, and hold a goalkeeper
 * only if one of them is willing; then there is always an answer.
 */
export function solveWithStandIns(
  children: readonly Child[],
  positions: readonly Position[],
  blockSides: readonly Side[],
): SolvedLineups {
  assert(positions.length <= children.length, 'each position needs a child')
  let sets = tonightsSets(children, positions)
  const lacking = new Set<Position>()
  for (let attempt = 0; attempt < positions.length * 4; attempt += 1) {
    const result = solve(sets, positions, blockSides)
    if (result.ok) return { lineups: result.value, lacking: [...lacking].sort(compareIds) }
    if (result.refusal.code !== 'positions-lack-children') break
    const { positions: lacks, children: able } = result.refusal
    for (const position of lacks) lacking.add(position)
    sets = standIn(sets, lacks, new Set(able))
  }
  const spread = solve(anywhere(children, positions), positions, blockSides)
  assert(spread.ok, 'each child at its own position is always a line-up')
  return { lineups: spread.value, lacking: [...lacking].sort(compareIds) }
}

export function isWilling(child: Child): boolean {
  return child.goalkeeper !== 'no'
}

function solve(sets: Sets, positions: readonly Position[], blockSides: readonly Side[]) {
  return solveLineups({
    positions,
    goalkeeperPosition: positions.includes(GOALKEEPER) ? GOALKEEPER : null,
    blocks: blockSides.map((side) => ({ side })),
    children: sets.map(({ child, choices }): LineupChild => {
      return { childId: child.playerId, positions: choices, goalkeeper: child.goalkeeper, past: child.past }
    }),
  })
}

function tonightsSets(children: readonly Child[], positions: readonly Position[]): Sets {
  const own = children.map((child) => ({ child, choices: ownChoices(child, positions) }))
  const cover = new Map<Position, number>()
  for (const { choices } of own) for (const { position } of choices) count(cover, position)
  const field = positions.filter((position) => position !== GOALKEEPER)
  return own.map(({ child, choices }) => {
    const hasField = choices.some(({ position }) => position !== GOALKEEPER)
    const added = rarest(field, choices, cover, (hasField ? 2 : POSITIONS_MAX) - choices.length)
    for (const { position } of added) count(cover, position)
    return { child, choices: [...choices, ...added] }
  })
}

/** Home, stretch, and goal for the willing, as far as they are on the field tonight. */
function ownChoices(child: Child, positions: readonly Position[]): readonly Choice[] {
  const wishes: readonly Choice[] = [
    ...(child.home === null ? [] : [{ position: child.home, preference: 'home' as const }]),
    ...(child.stretch === null ? [] : [{ position: child.stretch, preference: 'stretch' as const }]),
    { position: GOALKEEPER, preference: 'owed' },
  ]
  return wishes.filter(
    ({ position }, index) =>
      positions.includes(position) &&
      (position !== GOALKEEPER || isWilling(child)) &&
      wishes.findIndex((wish) => wish.position === position) === index,
  )
}

function rarest(
  field: readonly Position[],
  has: readonly Choice[],
  cover: ReadonlyMap<Position, number>,
  wanted: number,
): readonly Choice[] {
  const open = field.filter((position) => !has.some((choice) => choice.position === position))
  return open
    .sort((a, b) => (cover.get(a) ?? 0) - (cover.get(b) ?? 0) || compareIds(a, b))
    .slice(0, Math.max(0, wanted))
    .map((position) => ({ position, preference: 'owed' }))
}

/** Gives the first lacking position one more child, from outside those who could already play the lacking ones. */
function standIn(sets: Sets, lacks: readonly Position[], able: ReadonlySet<string>): Sets {
  const position = lacks[0]
  if (position === undefined) return sets
  const free = sets
    .filter(({ child }) => !able.has(child.playerId) && (position !== GOALKEEPER || isWilling(child)))
    .toSorted((a, b) => a.choices.length - b.choices.length || compareIds(a.child.playerId, b.child.playerId))
  const chosen = free[0]
  if (!chosen) return sets
  const kept = chosen.choices.length < POSITIONS_MAX ? chosen.choices : chosen.choices.slice(0, POSITIONS_MAX - 1)
  const choices: readonly Choice[] = [...kept, { position, preference: 'owed' }]
  return sets.map((each) => (each.child === chosen.child ? { child: each.child, choices } : each))
}

/** The last resort: child i plays at position i or the next two, a willing one in goal; whoever is left over likewise. */
function anywhere(children: readonly Child[], positions: readonly Position[]): Sets {
  const keeper = positions.includes(GOALKEEPER) ? (children.find(isWilling) ?? null) : null
  const field = positions.filter((position) => position !== GOALKEEPER)
  const others = children.filter((child) => child !== keeper)
  const around = (index: number): readonly Choice[] => {
    const wanted = [0, 1, 2].map((step) => field[(index + step) % field.length]).filter((each) => each !== undefined)
    return [...new Set(wanted)].map((position) => ({ position, preference: 'owed' }))
  }
  const inField = others.map((child, index) => ({ child, choices: field.length === 0 ? [] : around(index) }))
  return keeper ? [{ child: keeper, choices: [{ position: GOALKEEPER, preference: 'owed' }] }, ...inField] : inField
}

function count(cover: Map<Position, number>, position: Position): void {
  cover.set(position, (cover.get(position) ?? 0) + 1)
}
