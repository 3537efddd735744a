import type { PatternDocument } from '../pattern'
import type { Space } from '../pitch'
import { assert, ok, type Result } from '../quantities'
import { CHECK_VERSION, type CheckOptions, checkPattern } from './check-pattern'
import { coverOf } from './cover/cover-of'
import type { LookCover } from './cover/look-cover'
import type { ErrorRunsRefusal, RunRange } from './error-runs/error-runner'
import { type ErrorRuns, errorRuns } from './error-runs/error-runs'
import type { CheckNote } from './note'
import { type PressureOptions, type PressureReport, pressureOn } from './pressure/pressure'
import { sayWorksAgainst } from './pressure/words'
import type { Timeline } from './timeline'

/** Who plays on what, and how much is asked: each part beyond notes and timeline costs its own time. */
export type CheckReportOptions = Omit<CheckOptions, 'severity'> & {
  readonly looks: boolean
  readonly pressure: boolean | Pick<PressureOptions, 'opponentsMax' | 'released'>
  readonly errorRuns: Pick<RunRange, 'runs' | 'seed'> | null
}

/** All the check says of a pattern on a space; null for a part that was not asked. */
export type CheckReport = {
  readonly checkVersion: string
  readonly notes: readonly CheckNote[]
  readonly timeline: Timeline
  /** In the order of the document's looks. */
  readonly looks: readonly LookCover[] | null
  readonly pressure: ToldPressure | null
  readonly errorRuns: ErrorRuns | null
}

/** With what a coach reads, as "Works against 2; against 3 it breaks at step 3." */
export type ToldPressure = PressureReport & { readonly sentence: string }

/**
 * Everything the check computes, in one plain value without a number that JSON cannot write: what a page's worker shows and
 * what the server answers are this. Refused only where the error runs are. The document must have passed `checkShape`.
 */
export function checkReport(
  document: PatternDocument,
  space: Space,
  { looks, pressure, errorRuns: wish, ...who }: CheckReportOptions,
): Result<CheckReport, ErrorRunsRefusal> {
  const runs = wish === null ? ok(null) : errorRuns(document, space, { ...who, ...wish })
  if (!runs.ok) return runs
  const { notes, timeline } = checkPattern(document, space, who)
  const report: CheckReport = {
    checkVersion: CHECK_VERSION,
    notes,
    timeline,
    looks: looks ? coverOf(document, space, who) : null,
    pressure:
      pressure === false ? null : tellPressure(document, space, { ...who, ...(pressure === true ? {} : pressure) }),
    errorRuns: runs.value,
  }
  const broken = findNotFinite(report)
  assert(broken === null, `the report holds no finite number at ${broken}`)
  return ok(report)
}

function tellPressure(document: PatternDocument, space: Space, options: PressureOptions): ToldPressure {
  const report = pressureOn(document, space, options)
  return { ...report, sentence: sayWorksAgainst(document, report) }
}

/** Where a value holds a number that is none or has no end, which JSON would write as null; null where it holds none. */
export function findNotFinite(value: unknown, pointer = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : pointer
  if (typeof value !== 'object' || value === null) return null
  for (const [name, inner] of Object.entries(value)) {
    const found = findNotFinite(inner, `${pointer}/${name}`)
    if (found !== null) return found
  }
  return null
}
