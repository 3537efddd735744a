import { X_COUNTS } from './look-cover'
import type { LookLogic, LookState } from './look-state'
import type { Presser } from './signs'

/** So many placements lead to one state, seen with one presser. */
export type StateCount = { readonly state: LookState; readonly presser: Presser | null; readonly count: number }

/** Sets of no, one, two … places by their state. */
type Levels = readonly Map<LookState, number>[]

/**
 * How many sets of one, two and three different places lead to which state, by how many X: exact whole numbers, without
 * going through the sets. States only ever gain bits, so places are added one kind after another, each choice of j out of c
 * alike places at once. Who presses depends on who is nearest: places from which nobody could press come first, by kind;
 * those from which an X presses follow from the furthest to the nearest, so that the one added last is the nearest of its set.
 * The largest number is that of all sets, below 2⁵³ for any grid the domain makes.
 */
export function countPlacements(logic: LookLogic): readonly (readonly StateCount[])[] {
  const most = X_COUNTS.length
  const levels: Levels = Array.from({ length: most + 1 }, () => new Map<LookState, number>())
  levels[0]!.set(logic.base, 1)
  for (const [state, count] of kindsWithoutPresser(logic)) addPlaces(logic, levels, state, count, most)
  const found = X_COUNTS.map((opponents) =>
    [...levels[opponents]!].map(([state, count]): StateCount => ({ state, presser: null, count })),
  )
  for (const index of furthestFirst(logic)) {
    const own = logic.states[index]!
    const presser = logic.pressers[index]!
    X_COUNTS.forEach((opponents, at) => {
      for (const [state, count] of levels[opponents - 1]!) {
        found[at]!.push({ state: logic.merge(state, own), presser, count })
      }
    })
    addPlaces(logic, levels, own, 1, most - 1)
  }
  return found
}

/** The places somebody presses from. */
function furthestFirst({ pressers, nearness }: LookLogic): readonly number[] {
  const pressing = pressers.flatMap((presser, index) => (presser === null ? [] : [index]))
  return pressing.sort((a, b) => nearness[b]! - nearness[a]!)
}

function kindsWithoutPresser({ states, pressers }: LookLogic): ReadonlyMap<LookState, number> {
  const kinds = new Map<LookState, number>()
  states.forEach((state, index) => {
    if (pressers[index] === null) kinds.set(state, (kinds.get(state) ?? 0) + 1)
  })
  return kinds
}

/** Adds `count` alike places: of every set up to `most` places some, from the largest down so that each is added once. */
function addPlaces({ merge }: LookLogic, levels: Levels, own: LookState, count: number, most: number): void {
  for (let size = most; size >= 1; size -= 1) {
    for (let chosen = 1; chosen <= Math.min(size, count); chosen += 1) {
      const ways = choose(count, chosen)
      for (const [state, sets] of levels[size - chosen]!) {
        const once = merge(state, own)
        const merged = chosen === 1 ? once : merge(once, own)
        levels[size]!.set(merged, (levels[size]!.get(merged) ?? 0) + sets * ways)
      }
    }
  }
}

/** How many sets of this many different places there are; exact for the sizes counted here. */
export function choose(places: number, chosen: number): number {
  let sets = 1
  for (let index = 0; index < chosen; index += 1) sets = (sets * (places - index)) / (index + 1)
  return places < chosen ? 0 : sets
}
