import { choose } from './count-placements'
import type { XCount } from './look-cover'
import type { LookLogic } from './look-state'
import { type PlaceGrid, touchingClusters } from './place-grid'
import type { Presser } from './signs'

/** X at these places, and none elsewhere, leave nothing open; without any one of them something is. */
export type HolePlaces = { readonly places: readonly number[]; readonly size: number }

/** More clusters than this are not tried together: holes are named as examples, only their counts are exact. */
const CLUSTERS_MAX = 40
const HOLES_MAX = 3

/**
 * The smallest sets of X that leave nothing open. Touching places that do the same to the look stand for each other, told by
 * the one in their middle; the size of a set is how many sets of such places it stands for.
 */
export function smallestHoles(logic: LookLogic, grid: PlaceGrid): readonly HolePlaces[] {
  const isHole = (places: readonly number[]) => takenAt(logic, places) === null
  const singles = touchingClusters(grid, (index) => (isHole([index]) ? 0 : null))
  const parts = touchingClusters(grid, (index) => (isHole([index]) ? null : kindOf(logic, index)))
  const largest = parts.sort((a, b) => b.size - a.size || a.middle - b.middle).slice(0, CLUSTERS_MAX)
  const found: HolePlaces[] = singles.map(({ middle, size }) => ({ places: [middle], size }))
  const pairs = largest.map((one, at) => largest.map((other, next) => next > at && isHole([one.middle, other.middle])))
  largest.forEach((one, first) => {
    for (let second = first + 1; second < largest.length; second += 1) {
      const other = largest[second]!
      if (pairs[first]![second]) {
        found.push({ places: [one.middle, other.middle], size: one.size * other.size })
        continue
      }
      for (let third = second + 1; third < largest.length; third += 1) {
        if (pairs[first]![third] || pairs[second]![third]) continue
        const last = largest[third]!
        const places = [one.middle, other.middle, last.middle]
        if (isHole(places)) found.push({ places, size: one.size * other.size * last.size })
      }
    }
  })
  return found
}

/** The holes to name for so many X, those that stand for most placements first. */
export function largestHoles(
  holes: readonly HolePlaces[],
  grid: PlaceGrid,
  opponents: XCount,
): readonly (readonly number[])[] {
  return holes
    .map(({ places, size }) => ({
      places,
      weight: size * choose(grid.length - places.length, opponents - places.length),
    }))
    .filter(({ places, weight }) => places.length <= opponents && weight > 0)
    .sort((a, b) => b.weight - a.weight || a.places.length - b.places.length || a.places[0]! - b.places[0]!)
    .slice(0, HOLES_MAX)
    .map(({ places }) => [...places].sort((a, b) => a - b))
}

/** What is taken with X at exactly these places. */
export function takenAt(logic: LookLogic, places: readonly number[]): number | null {
  let state = logic.base
  let presser: Presser | null = null
  let nearest = Number.POSITIVE_INFINITY
  for (const index of places) {
    state = logic.merge(state, logic.states[index]!)
    const rank = logic.nearness[index]!
    if (rank >= nearest) continue
    nearest = rank
    presser = logic.pressers[index]!
  }
  return logic.taken(state, presser)
}

const PRESSERS = ['inside', 'outside', 'straight'] as const

/** One number for what an X does to the look; null where they change nothing. */
function kindOf({ states, pressers, base }: LookLogic, index: number): number | null {
  const state = states[index]!
  const presser = pressers[index]!
  if (presser === null) return (state | base) === base ? null : state * 4
  return state * 4 + 1 + PRESSERS.indexOf(presser)
}
