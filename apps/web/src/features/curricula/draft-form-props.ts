import type { PatternSummary } from '@espalier/contract/patterns'
import type { DraftDocument } from '@espalier/domain/curriculum'
import type { DraftChange } from './edit-draft'

export type DraftFormProps = {
  readonly clubId: string
  readonly draft: DraftDocument
  readonly patterns: readonly PatternSummary[]
  readonly onChange: (change: DraftChange, typingIn?: string) => void
}
