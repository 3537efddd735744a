import { countChanges, countSits } from './changes'
import type { Round } from './instance'
import { type Arrangement, dealRounds, refillRounds } from './rounds'

/** How hard to look for fewer changes: counts, not time, so that every machine finds the same. */
export type Effort = { readonly deals: number; readonly refills: number }

/**
 * Few changes of position, at equally fair counts. Several deals; each is improved by refilling every other block, then sets of
 * blocks drawn by a fixed rule, until it has no change left or the effort is spent. What is returned is the best found; only
 * zero is a proof by itself.
 */
export function arrangeRounds(arrangement: Arrangement, effort: Effort): Round[] {
  let best: Round[] | null = null
  for (let deal = 0; deal < effort.deals; deal++) {
    const rounds = improve(arrangement, dealRounds(arrangement, noiseOf(deal)), effort.refills, deal)
    if (best === null || isBetter(arrangement, rounds, best)) best = rounds
    if (countChanges(arrangement.opening, best) === 0) break
  }
  return best ?? []
}

function improve(arrangement: Arrangement, dealt: Round[], refills: number, deal: number): Round[] {
  let rounds = dealt
  let idle = 0
  for (let turn = 0; turn < refills; turn++) {
    const taken = takenBlocks(rounds.length, turn, deal)
    const refilled = refillRounds(arrangement, rounds, taken, noiseOf(turn < 4 ? 0 : turn + 7 * deal))
    const improved = isBetter(arrangement, refilled, rounds)
    idle = improved ? 0 : idle + 1
    if (improved || isEqual(arrangement, refilled, rounds)) rounds = refilled
    if (idle >= 2 && countChanges(arrangement.opening, rounds) === 0) break
  }
  return rounds
}

/** Odd blocks, even blocks, and from the fifth turn on mixed sets without neighbours. */
function takenBlocks(blocks: number, turn: number, deal: number): number[] {
  const taken: number[] = []
  for (let block = 0; block < blocks; block++) {
    const wanted = turn < 4 ? block % 2 !== turn % 2 : scramble(block, turn, deal) % 3 > 0
    if (wanted && taken.at(-1) !== block - 1) taken.push(block)
  }
  return taken
}

function isBetter(arrangement: Arrangement, a: readonly Round[], b: readonly Round[]): boolean {
  const difference = countChanges(arrangement.opening, a) - countChanges(arrangement.opening, b)
  return difference < 0 || (difference === 0 && countSits(arrangement.opening, a) < countSits(arrangement.opening, b))
}

function isEqual(arrangement: Arrangement, a: readonly Round[], b: readonly Round[]): boolean {
  return !isBetter(arrangement, a, b) && !isBetter(arrangement, b, a)
}

/** Small costs that choose between equals, otherwise by the order of the network; the first choice has none. */
function noiseOf(variant: number): (child: number, position: number, block: number) => number {
  if (variant === 0) return () => 0
  return (child, position, block) => scramble(child * 31 + position, block, variant) % 3
}

/** A fixed mixing of three small numbers to 31 bits; not random: the same everywhere and every time. */
function scramble(a: number, b: number, c: number): number {
  let mixed = Math.imul(a + 1, 0x9e3779b1) ^ Math.imul(b + 1, 0x85ebca6b) ^ Math.imul(c + 1, 0xc2b2ae35)
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d)
  mixed = Math.imul(mixed ^ (mixed >>> 12), 0x297a2d39)
  return (mixed ^ (mixed >>> 15)) & 0x7fffffff
}
