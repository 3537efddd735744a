import type { PatternDocument } from '../../pattern'
import type { Space } from '../../pitch'
import { assert, habit, ok, type Result, refuse, type Sourced, unreachable } from '../../quantities'
import {
  type ErrorRunner,
  type ErrorRunsRefusal,
  type ErrorSetting,
  findRangeFault,
  makeErrorRunner,
  type RunRange,
} from './error-runner'
import { addErrorRuns, countOutcome, type ErrorRuns, makeTally, NOT_A_FORECAST, runsOf } from './error-runs'
import { GOT_OUT } from './play-run'
import { signTest } from './sign-test'

/** One side of a comparison: two documents, or one with two settings. */
export type ErrorCandidate = ErrorSetting & { readonly document: PatternDocument; readonly space: Space }

/** Runs played by both sides with the same errors step by step. */
export type PairedRuns = {
  readonly runs: number
  readonly onlyA: number
  readonly onlyB: number
  readonly a: ErrorRuns
  readonly b: ErrorRuns
}

export const VERDICTS = ['clearly', 'maybe', 'no difference'] as const
export type Verdict = (typeof VERDICTS)[number]

/** What a verdict is held against. A difference must be unlikely by chance and also large enough to matter. */
export type VerdictLimits = {
  readonly clearlyChance: Sourced<number>
  readonly maybeChance: Sourced<number>
  readonly clearlyDifference: Sourced<number>
  readonly maybeDifference: Sourced<number>
}

export const VERDICT_LIMITS: VerdictLimits = {
  clearlyChance: habit(0.01),
  maybeChance: habit(0.05),
  clearlyDifference: habit(0.05),
  maybeDifference: habit(0.01),
}

export type ErrorComparison = {
  readonly verdict: Verdict
  /** Which gets out more often; null where there is no difference. */
  readonly moreOften: 'a' | 'b' | null
  /** How likely pairs part at least so unevenly by chance: the exact test of McNemar. */
  readonly chance: number
  readonly paired: PairedRuns
  readonly caution: string
}

/** Plays both with common random numbers: run by run, step by step, both meet the same error. */
export function compareErrorRuns(
  a: ErrorCandidate,
  b: ErrorCandidate,
  range: RunRange,
  limits: VerdictLimits = VERDICT_LIMITS,
): Result<ErrorComparison, ErrorRunsRefusal> {
  const one = makeErrorRunner(a.document, a.space, a)
  if (!one.ok) return one
  const other = makeErrorRunner(b.document, b.space, b)
  if (!other.ok) return other
  const paired = playPairs(one.value, other.value, range)
  return paired.ok ? ok(judgePairs(paired.value, limits)) : paired
}

/** The pairs of a range; slices are put together by `addPairs` and judged by `judgePairs`. */
export function playPairs(a: ErrorRunner, b: ErrorRunner, range: RunRange): Result<PairedRuns, ErrorRunsRefusal> {
  const fault = findRangeFault([a, b], range)
  if (fault !== null) return refuse(fault)
  const { seed, runs, from = 0 } = range
  const tallyA = makeTally(a.program)
  const tallyB = makeTally(b.program)
  let onlyA = 0
  let onlyB = 0
  for (let run = from; run < from + runs; run += 1) {
    const one = a.play(seed, run)
    const other = b.play(seed, run)
    countOutcome(tallyA, one)
    countOutcome(tallyB, other)
    if (one === GOT_OUT && other !== GOT_OUT) onlyA += 1
    if (other === GOT_OUT && one !== GOT_OUT) onlyB += 1
  }
  return ok({ runs, onlyA, onlyB, a: runsOf(a.program, tallyA, runs), b: runsOf(b.program, tallyB, runs) })
}

export function addPairs(one: PairedRuns, other: PairedRuns): PairedRuns {
  return {
    runs: one.runs + other.runs,
    onlyA: one.onlyA + other.onlyA,
    onlyB: one.onlyB + other.onlyB,
    a: addErrorRuns(one.a, other.a),
    b: addErrorRuns(one.b, other.b),
  }
}

/**
 * Clearly: unlikely by chance and a difference worth a choice. Maybe: one of the two only just. No difference: as likely by
 * chance, or too small to matter.
 */
export function judgePairs(paired: PairedRuns, limits: VerdictLimits = VERDICT_LIMITS): ErrorComparison {
  assert(paired.runs > 0, 'a comparison needs runs')
  const { onlyA, onlyB } = paired
  const chance = signTest(onlyA, onlyB)
  const difference = Math.abs(onlyA - onlyB) / paired.runs
  const isSeen = chance < limits.maybeChance.value && difference >= limits.maybeDifference.value
  const isClear = chance < limits.clearlyChance.value && difference >= limits.clearlyDifference.value
  const verdict = isSeen ? (isClear ? 'clearly' : 'maybe') : 'no difference'
  const moreOften = verdict === 'no difference' ? null : onlyA > onlyB ? 'a' : 'b'
  return { verdict, moreOften, chance, paired, caution: NOT_A_FORECAST }
}

/** What a coach reads: which one, and how sure; never a number of runs. */
export function sayComparison(comparison: ErrorComparison, nameOfA: string, nameOfB: string): string {
  const { verdict, moreOften } = comparison
  const [better, other] = moreOften === 'b' ? [nameOfB, nameOfA] : [nameOfA, nameOfB]
  switch (verdict) {
    case 'clearly':
      return `${better} clearly gets out more often than ${other}.`
    case 'maybe':
      return `${better} may get out more often than ${other}.`
    case 'no difference':
      return `No difference is seen between ${nameOfA} and ${nameOfB}.`
    default:
      return unreachable(verdict)
  }
}
