import type { LineupRequest } from '../types'
import { fairnessProgram } from './fairness-program'

export type Optimum = { readonly sumOfSquares: number; readonly sideSumOfSquares: number }

/** Any solver of LP text that returns a proven optimum: injected, so that this folder imports none. */
export type Minimise = (program: string) => number

/** Two stages: the smallest first sum, then the smallest second sum at that first sum. */
export function solveByOracle(request: LineupRequest, minimise: Minimise): Optimum {
  const sumOfSquares = minimise(fairnessProgram(request, null))
  return { sumOfSquares, sideSumOfSquares: minimise(fairnessProgram(request, { sumOfSquares })) }
}

type HighsLike = {
  solve(
    program: string,
    options: { output_flag: false; mip_rel_gap: number },
  ): { Status: string; ObjectiveValue: number }
}

/** Anything but a proven optimum, and any value that is not whole, is thrown: an oracle must not guess. */
export function minimiseWith(highs: HighsLike): Minimise {
  return (program) => {
    const result = highs.solve(program, { output_flag: false, mip_rel_gap: 0 })
    if (result.Status !== 'Optimal') throw new Error(`the oracle ended with ${result.Status}`)
    const whole = Math.round(result.ObjectiveValue)
    if (Math.abs(whole - result.ObjectiveValue) > 1e-4) throw new Error(`not a whole optimum: ${result.ObjectiveValue}`)
    return whole
  }
}
