import type { Teaching } from '@espalier/domain/pattern'
import { tonightMessage } from '../../messages/tonight'
import { FieldSection } from './field-frame'

type PatternTeachingProps = { readonly teaching: Teaching; readonly conditions: readonly string[] }

/** What the club wants the coach to know of the pattern: why, what good looks like, what to change. */
export function PatternTeaching({ teaching, conditions }: PatternTeachingProps) {
  const parts = [
    { title: tonightMessage('conditions'), words: conditions.join('. ') },
    { title: tonightMessage('why'), words: teaching.why },
    { title: tonightMessage('good'), words: teaching.good },
    ...teaching.mistakes.map(({ seen, change }) => ({
      title: tonightMessage('mistakes'),
      words: `${seen} → ${change}`,
    })),
    { title: tonightMessage('question'), words: teaching.question },
    { title: tonightMessage('easier'), words: teaching.easier },
    { title: tonightMessage('harder'), words: teaching.harder },
    { title: tonightMessage('goLong'), words: teaching.goLong },
  ].filter((part) => part.words !== '')
  if (parts.length === 0) return null
  return (
    <FieldSection title={tonightMessage('teaching')}>
      <dl className="grid grid-cols-[7rem_1fr] gap-x-3 gap-y-2">
        {parts.map(({ title, words }) => (
          <div key={`${title} ${words}`} className="contents">
            <dt className="text-small text-ink-soft">{title}</dt>
            <dd className="voice-club leading-snug">{words}</dd>
          </div>
        ))}
      </dl>
    </FieldSection>
  )
}
