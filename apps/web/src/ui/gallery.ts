import { buttonExamples } from './button/button.examples'
import { checkLineExamples } from './check-line/check-line.examples'
import { dialogExamples } from './dialog/dialog.examples'
import { emptyStateExamples } from './empty-state/empty-state.examples'
import type { Examples } from './example'
import { fieldSetExamples } from './field-set/field-set.examples'
import { numberFieldExamples } from './number-field/number-field.examples'
import { originExamples } from './origin/origin.examples'
import { partExamples } from './part/part.examples'
import { problemNoticeExamples } from './problem-notice/problem-notice.examples'
import { selectFieldExamples } from './select-field/select-field.examples'
import { statusExamples } from './status/status.examples'
import { tableExamples } from './table/table.examples'
import { textFieldExamples } from './text-field/text-field.examples'

/** Every component's examples, for the gallery page. The page frame is left out: the gallery wears it itself. */
export const galleryOfUi = {
  button: buttonExamples,
  'text field': textFieldExamples,
  'number field': numberFieldExamples,
  'select field': selectFieldExamples,
  'check line': checkLineExamples,
  'field set': fieldSetExamples,
  part: partExamples,
  dialog: dialogExamples,
  status: statusExamples,
  'problem notice': problemNoticeExamples,
  table: tableExamples,
  'empty state': emptyStateExamples,
  origin: originExamples,
} as const satisfies Readonly<Record<string, Examples>>
