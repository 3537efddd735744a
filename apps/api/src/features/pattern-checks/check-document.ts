import { CHECK_RUNS_MAX, type PatternCheckBody } from '@espalier/contract/pattern-checks'
import { AGE_PROFILES, type ErrorRunsRefusal } from '@espalier/domain/check'
import { nominalSpace } from '@espalier/domain/pitch'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import type { CheckTask } from '../../workers/check-job'
import type { CheckStop } from '../../workers/check-pool'
import { refuseShapeFaults } from '../patterns/shape-refusal'

/** Checks a document that nobody has saved; null where whoever asked has hung up. Stores nothing. */
export async function checkDocument(
  { checks }: Deps,
  body: PatternCheckBody,
  hungUp: AbortSignal,
): Promise<Result<string | null, Refusal>> {
  const shape = refuseShapeFaults(body.document)
  if (!shape.ok) return shape
  const runs = body.options.errorRuns?.runs ?? 0
  if (runs > CHECK_RUNS_MAX) {
    const detail = `must be at most ${CHECK_RUNS_MAX}`
    return refuse({ code: 'too-many-runs', errors: [{ pointer: '/options/errorRuns/runs', detail }] })
  }
  const report = await checks.run(taskOf(body), hungUp)
  if (report.ok) return report
  return report.refusal.code === 'hung-up' ? ok(null) : refuse(refusalOf(report.refusal))
}

function taskOf({ document, space, profileId, surface, options }: PatternCheckBody): CheckTask {
  return {
    document,
    space: space ?? nominalSpace(document.formatId),
    options: {
      ...options,
      ...(profileId === undefined ? {} : { profile: AGE_PROFILES[profileId] }),
      ...(surface === undefined ? {} : { surface }),
    },
  }
}

function refusalOf(refusal: ErrorRunsRefusal | Exclude<CheckStop, { code: 'hung-up' }>): Refusal {
  switch (refusal.code) {
    case 'busy':
      return { code: 'busy' }
    case 'too-long':
      return { code: 'check-too-much', detail: 'it takes too long' }
    case 'too-large':
      return { code: 'check-too-much', detail: 'it takes too much memory' }
    default:
      return { code: 'check-too-much', detail: 'detail' in refusal ? refusal.detail : refusal.code }
  }
}
