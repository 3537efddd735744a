import { parentPort } from 'node:worker_threads'
import { checkReport, type ErrorRunsRefusal } from '@espalier/domain/check'
import { ok, type Result } from '@espalier/domain/quantities'
import type { CheckJob } from './check-job'

// The entry of a thread of its own, loaded by the pool.

/** Checks a pattern and writes down what it says. It first tells the pool that its time runs from now on. */
export function writeReport({ jobId, document, space, options }: CheckJob): Result<string, ErrorRunsRefusal> {
  parentPort?.postMessage(jobId)
  const report = checkReport(document, space, options)
  return report.ok ? ok(JSON.stringify(report.value)) : report
}
