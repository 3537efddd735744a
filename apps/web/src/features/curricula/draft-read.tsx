import type { PatternSummary } from '@espalier/contract/patterns'
import type { DraftDocument } from '@espalier/domain/curriculum'
import { curriculaMessage } from '../../messages/curricula'
import { draftLines } from './draft-words'

type DraftReadProps = { readonly draft: DraftDocument; readonly patterns: readonly PatternSummary[] }

/** A draft as plain lines, for whoever may read it and not write it. */
export function DraftRead({ draft, patterns }: DraftReadProps) {
  const titleOf = (patternId: string) =>
    patterns.find((pattern) => pattern.patternId === patternId)?.title ?? curriculaMessage('patternGone')
  return (
    <ul className="voice-club">
      {draftLines(draft, titleOf).map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines may repeat and are never reordered here
        <li key={index} className="border-t border-wire py-2">
          {line}
        </li>
      ))}
    </ul>
  )
}
