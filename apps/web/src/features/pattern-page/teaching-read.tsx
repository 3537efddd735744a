import type { PatternDocument } from '@espalier/domain/pattern'
import type { ReactNode } from 'react'
import { patternsMessage } from '../../messages/patterns'

/** The teaching content as a coach reads it; what is not written is not there. */
export function TeachingRead({ document }: { readonly document: PatternDocument }) {
  const { teaching } = document
  const lines = (['why', 'good', 'question', 'easier', 'harder', 'goLong'] as const).filter(
    (field) => teaching[field].trim() !== '',
  )
  const mistakes = teaching.mistakes.filter(({ seen }) => seen.trim() !== '')
  return (
    <dl className="grid gap-x-8 gap-y-3 desk:grid-cols-2 print:grid-cols-3 print:gap-y-1 print:text-[8.5pt]">
      {lines.map((field) => (
        <Line key={field} term={patternsMessage(field)}>
          {teaching[field]}
        </Line>
      ))}
      {mistakes.map(({ seen, change }) => (
        <Line key={seen} term={patternsMessage('mistake')}>
          {seen}
          {change !== '' && (
            <>
              {' '}
              <span className="font-semibold">{patternsMessage('mistakeTo')}:</span> {change}
            </>
          )}
        </Line>
      ))}
      {teaching.callWords.length > 0 && (
        <Line term={patternsMessage('callWords')}>{teaching.callWords.join(', ')}</Line>
      )}
    </dl>
  )
}

function Line({ term, children }: { readonly term: string; readonly children: ReactNode }) {
  return (
    <div className="max-w-text border-t border-wire pt-1">
      <dt className="text-small text-ink-soft">{term}</dt>
      <dd className="voice-club">{children}</dd>
    </div>
  )
}
