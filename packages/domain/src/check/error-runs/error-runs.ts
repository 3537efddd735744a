import type { PatternDocument } from '../../pattern'
import type { Space } from '../../pitch'
import { assert, ok, type Result, refuse } from '../../quantities'
import {
  type ErrorRunner,
  type ErrorRunsRefusal,
  type ErrorSetting,
  findRangeFault,
  makeErrorRunner,
  type RunRange,
} from './error-runner'
import { LOSS_CAUSES, type LossCause } from './loss-causes'
import { GOT_OUT } from './play-run'
import type { Program } from './program'

/** Stands wherever a result of error runs is shown. */
export const NOT_A_FORECAST =
  'This only compares. Both play under the same assumed errors, which nobody measured on your team: it is not a forecast of how often anyone gets out.'

export type StepRuns = {
  readonly stepId: string
  /** Runs in which this step's ball was played. */
  readonly reached: number
  /** Runs in which it was lost, by cause. */
  readonly lost: Readonly<Record<LossCause, number>>
}

/** What came of a number of runs. Counts for the engine and for comparing: a coach is shown no share of them. */
export type ErrorRuns = {
  readonly runs: number
  readonly gotOut: number
  readonly share: number
  /** Of the share: √(p(1 − p)/n), the binomial's. */
  readonly standardError: number
  readonly steps: readonly StepRuns[]
  readonly caution: string
}

/**
 * Plays a pattern many times with errors in direction, speed, first touch and reaction, and counts. Seeded: the same runs
 * of the same seed give the same counts in every engine. At most a million runs; in slices where one wishes to stop early.
 */
export function errorRuns(
  document: PatternDocument,
  space: Space,
  options: ErrorSetting & RunRange,
): Result<ErrorRuns, ErrorRunsRefusal> {
  const runner = makeErrorRunner(document, space, options)
  return runner.ok ? playRuns(runner.value, options) : runner
}

/** The same for a document made ready before: what a worker calls for slice after slice. */
export function playRuns(runner: ErrorRunner, range: RunRange): Result<ErrorRuns, ErrorRunsRefusal> {
  const fault = findRangeFault([runner], range)
  if (fault !== null) return refuse(fault)
  const { seed, runs, from = 0 } = range
  const tally = makeTally(runner.program)
  for (let run = from; run < from + runs; run += 1) countOutcome(tally, runner.play(seed, run))
  return ok(runsOf(runner.program, tally, runs))
}

/** Lost balls, by step and cause. */
export type Tally = Float64Array

export function makeTally(program: Program): Tally {
  return new Float64Array(program.steps * LOSS_CAUSES.length)
}

export function countOutcome(tally: Tally, outcome: number): void {
  if (outcome !== GOT_OUT) tally[outcome]! += 1
}

export function runsOf(program: Program, tally: Tally, runs: number): ErrorRuns {
  let reached = runs
  const steps = program.stepIds.map((stepId, step): StepRuns => {
    const counts = LOSS_CAUSES.map((cause, at) => [cause, tally[step * LOSS_CAUSES.length + at] ?? 0] as const)
    const lost = Object.fromEntries(counts) as Record<LossCause, number>
    const here = { stepId, reached, lost }
    reached -= counts.reduce((sum, [, count]) => sum + count, 0)
    return here
  })
  return withShare({ runs, gotOut: reached, steps })
}

function withShare(counts: Pick<ErrorRuns, 'runs' | 'gotOut' | 'steps'>): ErrorRuns {
  const share = counts.gotOut / counts.runs
  return { ...counts, share, standardError: standardErrorOf(share, counts.runs), caution: NOT_A_FORECAST }
}

/** Standard error of a share of so many independent runs: √(p(1 − p)/n). */
export function standardErrorOf(share: number, runs: number): number {
  assert(runs > 0 && share >= 0 && share <= 1, 'a share of runs lies between none and all')
  return Math.sqrt((share * (1 - share)) / runs)
}

/** Two slices of the same document as one. */
export function addErrorRuns(one: ErrorRuns, other: ErrorRuns): ErrorRuns {
  assert(one.steps.length === other.steps.length, 'slices of one document have the same steps')
  const steps = one.steps.map((step, at): StepRuns => {
    const more = other.steps[at]
    assert(more?.stepId === step.stepId, 'slices of one document have the same steps')
    const lost = Object.fromEntries(LOSS_CAUSES.map((cause) => [cause, step.lost[cause] + more.lost[cause]]))
    return { ...step, reached: step.reached + more.reached, lost: lost as Record<LossCause, number> }
  })
  return withShare({ runs: one.runs + other.runs, gotOut: one.gotOut + other.gotOut, steps })
}
