import type { RequestShape } from './random-request'

const SIZES = [
  { children: 7, positions: 5, blocks: 6 },
  { children: 8, positions: 7, blocks: 5 },
  { children: 9, positions: 7, blocks: 6 },
  { children: 10, positions: 7, blocks: 8 },
  { children: 12, positions: 9, blocks: 6 },
  { children: 14, positions: 11, blocks: 5 },
] as const

/** Sixty requests that leave little room: few choices, few children to spare, uneven pasts, with and without a goalkeeper. */
export const ORACLE_CASES: readonly RequestShape[] = Array.from({ length: 60 }, (_, index) => ({
  seed: 1000 + index,
  ...SIZES[index % SIZES.length]!,
  choices: index % 4 === 3 ? 3 : 2,
  withGoalkeeper: index % 5 !== 4,
  pastMost: [0, 3, 9][index % 3]!,
}))

/** The sizes of the benchmark, solved once by the oracle. */
export const BENCH_CASES: readonly RequestShape[] = [
  { seed: 7, children: 10, positions: 7, blocks: 12, choices: 3, withGoalkeeper: true, pastMost: 9 },
  { seed: 7, children: 18, positions: 11, blocks: 30, choices: 3, withGoalkeeper: true, pastMost: 9 },
]
