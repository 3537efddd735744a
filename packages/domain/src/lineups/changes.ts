import { OFF, type Round } from './instance'

/** Children on the field in both line-ups who stand at another position in the second. */
export function changesBetween(before: Round, after: Round): number {
  let changes = 0
  for (let child = 0; child < before.length; child++) {
    if (before[child] !== OFF && after[child] !== OFF && before[child] !== after[child]) changes++
  }
  return changes
}

/** Children who sit out two line-ups in a row. */
export function sitsBetween(before: Round, after: Round): number {
  let sits = 0
  for (let child = 0; child < before.length; child++) if (before[child] === OFF && after[child] === OFF) sits++
  return sits
}

/** `opening` is the line-up already on the field, or null at the start. */
export function countChanges(opening: Round | null, rounds: readonly Round[]): number {
  return countBetween(opening, rounds, changesBetween)
}

export function countSits(opening: Round | null, rounds: readonly Round[]): number {
  return countBetween(opening, rounds, sitsBetween)
}

function countBetween(opening: Round | null, rounds: readonly Round[], count: (a: Round, b: Round) => number): number {
  let sum = 0
  let before = opening
  for (const round of rounds) {
    if (before !== null) sum += count(before, round)
    before = round
  }
  return sum
}
