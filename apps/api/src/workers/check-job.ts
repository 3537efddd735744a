import type { CheckReportOptions } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import type { Space } from '@espalier/domain/pitch'

/** What is handed to a thread: plain values only. The document has passed `checkShape`. */
export type CheckTask = {
  readonly document: PatternDocument
  readonly space: Space
  readonly options: CheckReportOptions
}

export type CheckJob = CheckTask & { readonly jobId: number }
