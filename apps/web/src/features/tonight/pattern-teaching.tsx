import type { Teaching } from '@espalier/domain/pattern'
import { lineUpsMessage } from '../../messages/line-ups'
import { tonightMessage } from '../../messages/tonight'
import { FieldSection } from './field-frame'

type PatternTeachingProps = { readonly teaching: Teaching; readonly conditions: readonly string[] }

/** What the club wants the coach to know of the pattern: why, what good looks like, what to change. */
export function PatternTeaching({ teaching, conditions }: PatternTeachingProps) {
  const parts = [
    { title: tonightMessage('conditions'), words: [conditions.join('. ')] },
    { title: lineUpsMessage('why'), words: [teaching.why] },
    { title: lineUpsMessage('good'), words: [teaching.good] },
    { title: lineUpsMessage('mistakes'), words: teaching.mistakes.map(({ seen, change }) => `${seen} → ${change}`) },
    { title: lineUpsMessage('question'), words: [teaching.question] },
    { title: lineUpsMessage('easier'), words: [teaching.easier] },
    { title: lineUpsMessage('harder'), words: [teaching.harder] },
    { title: lineUpsMessage('goLong'), words: [teaching.goLong] },
  ].flatMap(({ title, words }) => {
    const written = words.filter((each) => each !== '')
    return written.length === 0 ? [] : [{ title, words: written }]
  })
  if (parts.length === 0) return null
  return (
    <FieldSection title={lineUpsMessage('teaching')}>
      <dl className="grid grid-cols-[7rem_1fr] gap-x-3 gap-y-2">
        {parts.map(({ title, words }) => (
          <div key={title} className="contents">
            <dt className="text-small text-ink-soft">{title}</dt>
            {words.map((each) => (
              <dd key={each} className="voice-club col-start-2 leading-snug">
                {each}
              </dd>
            ))}
          </div>
        ))}
      </dl>
    </FieldSection>
  )
}
