import { MISTAKES_MIN, missingTeaching, type PatternDocument } from '@espalier/domain/pattern'
import { useState } from 'react'
import { patternsMessage } from '../../messages/patterns'
import { TextAreaField } from '../../ui/text-field/text-area-field'
import { TextField } from '../../ui/text-field/text-field'
import type { OnChange } from './change-callback'
import type { TeachingText } from './edit-pattern'
import { tidyPattern } from './tidy-pattern'

type TeachingFormProps = { readonly document: PatternDocument; readonly onChange: OnChange }

const LONGEST = { why: 240, good: 240, question: 160, easier: 200, harder: 200, goLong: 200 } as const satisfies Record<
  TeachingText,
  number
>

/** What a coach needs to teach the pattern from the page alone. */
export function TeachingForm({ document, onChange }: TeachingFormProps) {
  const text = (field: TeachingText) => (
    <TextAreaField
      key={field}
      name={`document/teaching/${field}`}
      label={patternsMessage(field)}
      {...(field === 'why' ? { hint: patternsMessage('whyHint') } : {})}
      value={document.teaching[field]}
      onChange={(event) => onChange({ kind: 'teaching', field, text: event.currentTarget.value }, `teaching ${field}`)}
      maxLength={LONGEST[field]}
      rows={2}
    />
  )
  return (
    <div className="flex flex-col gap-4">
      <p className="max-w-text text-small text-ink-soft">{patternsMessage('teachingLead')}</p>
      <div className="grid gap-x-8 gap-y-4 desk:grid-cols-2">
        {text('why')}
        {text('good')}
        <MistakeFields document={document} onChange={onChange} />
        {text('question')}
        {text('goLong')}
        {text('easier')}
        {text('harder')}
        <CallWordsField document={document} onChange={onChange} />
      </div>
      <MissingTeaching document={document} />
    </div>
  )
}

function MistakeFields({ document, onChange }: TeachingFormProps) {
  const { mistakes } = document.teaching
  return Array.from({ length: Math.max(MISTAKES_MIN, mistakes.length) }, (_, index) =>
    (['seen', 'change'] as const).map((field) => (
      <TextAreaField
        // biome-ignore lint/suspicious/noArrayIndexKey: mistakes have no other name than their number
        key={`${index} ${field}`}
        name={`document/teaching/mistakes/${index}/${field}`}
        label={patternsMessage(field === 'seen' ? 'mistakeSeen' : 'mistakeChange', { number: index + 1 })}
        value={mistakes[index]?.[field] ?? ''}
        onChange={(event) =>
          onChange({ kind: 'mistake', index, field, text: event.currentTarget.value }, `mistake ${index} ${field}`)
        }
        maxLength={160}
        rows={2}
      />
    )),
  )
}

/** Words with commas between; what is being typed stays as typed. */
function CallWordsField({ document, onChange }: TeachingFormProps) {
  const { callWords } = document.teaching
  const [typed, setTyped] = useState<string | null>(null)
  const said = callWords.join(', ')
  const text = typed !== null && wordsOf(typed).join(', ') === said ? typed : said
  return (
    <TextField
      name="document/teaching/callWords"
      label={patternsMessage('callWords')}
      hint={patternsMessage('callWordsHint')}
      value={text}
      onChange={(event) => {
        setTyped(event.currentTarget.value)
        onChange({ kind: 'call-words', words: wordsOf(event.currentTarget.value) }, 'call words')
      }}
      maxLength={320}
      autoComplete="off"
    />
  )
}

/** The contract takes twelve call words of at most 24 letters. */
export function wordsOf(text: string): readonly string[] {
  return text
    .split(',')
    .map((word) => word.trim().slice(0, 24).trim())
    .filter((word) => word !== '')
    .slice(0, 12)
}

function MissingTeaching({ document }: { readonly document: PatternDocument }) {
  const missing = missingTeaching(tidyPattern(document))
  if (missing.length === 0) return <p className="text-small text-ink-soft">{patternsMessage('missingNone')}</p>
  return (
    <div className="border-l-2 border-dotted border-ink-soft pl-3 text-small">
      <p className="font-semibold">{patternsMessage('missing')}</p>
      <p>{missing.map(({ detail }) => detail.replace(/ is missing$/, '')).join('; ')}.</p>
    </div>
  )
}
