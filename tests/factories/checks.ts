import type { PatternCheckBody } from '@espalier/contract/pattern-checks'
import { type CheckReportOptions, checkReport } from '@espalier/domain/check'
import type { PatternDocument, Step } from '@espalier/domain/pattern'
import { nominalSpace, type Space } from '@espalier/domain/pitch'
import { millimetres } from '@espalier/domain/quantities'
import type { CheckTask } from '../../apps/api/src/workers/check-job'
import { wallOnTheRight } from '../../prisma/demo/patterns'

export const PITCH: Space = nominalSpace('us-7v7')
export const NOTHING_MORE: CheckReportOptions = { looks: false, pressure: false, errorRuns: null }

/** What the domain says, computed in the thread that asks. */
export function reportText(document: PatternDocument, space: Space, options: CheckReportOptions): string {
  const report = checkReport(document, space, options)
  if (!report.ok) throw new Error(report.refusal.detail)
  return JSON.stringify(report.value)
}

/** Two defenders pass to and fro twelve times, and two dozen opponents stand in the far corner: every run is a long one. */
export const toAndFro: PatternDocument = {
  ...wallOnTheRight,
  obstacles: Array.from({ length: 24 }, (_, index) => ({
    obstacleId: `x${index}`,
    kind: 'opponent',
    spot: { landmark: 'far-corner-left', upMm: millimetres(-500 * index), rightMm: millimetres(500) },
  })),
  restart: 'open-play',
  steps: Array.from({ length: 12 }, (_, index): Step => {
    const [from, to] = index % 2 === 0 ? ['RCB', 'CM'] : ['CM', 'RCB']
    const into = { kind: 'feet' } as const
    const action = { kind: 'pass', from: from!, to: to!, into, height: 'ground', touches: 2, foot: 'either' } as const
    return { stepId: `s${index}`, action, runs: [], point: '' }
  }),
  looks: [],
}

export function taskOfRuns(runs: number): CheckTask {
  return { document: toAndFro, space: PITCH, options: { ...NOTHING_MORE, errorRuns: { runs, seed: 1 } } }
}

export function bodyOf(document: unknown, options: object = {}): PatternCheckBody {
  return { document, space: null, options: { ...NOTHING_MORE, ...options } } as PatternCheckBody
}
