'use client'

import { useId, useState } from 'react'
import { curriculaMessage } from '../../messages/curricula'
import { countWords } from '../writing/count-words'

type LinesBlankProps = {
  readonly label: string
  readonly hint: string
  readonly name: string
  readonly lines: readonly string[]
  readonly most: number
  /** Words a line may have; each line is then counted. */
  readonly wordsMost?: number
  readonly onWrite: (lines: readonly string[]) => void
}

/** Short texts, one a line. What is typed stays as typed while it says the same lines. */
export function LinesBlank({ label, hint, name, lines, most, wordsMost, onWrite }: LinesBlankProps) {
  const id = useId()
  const [typed, setTyped] = useState<string | null>(null)
  const said = lines.join('\n')
  const text = typed !== null && linesOf(typed, most).join('\n') === said ? typed : said
  return (
    <div className="flex max-w-text flex-col">
      <label htmlFor={id} className="text-small text-ink-soft">
        {label}. {hint}
      </label>
      <textarea
        id={id}
        name={name}
        value={text}
        rows={Math.max(1, lines.length)}
        onChange={(event) => {
          setTyped(event.currentTarget.value)
          onWrite(linesOf(event.currentTarget.value, most))
        }}
        className="blank voice-club field-sizing-content min-h-target w-full resize-none px-1 py-2"
      />
      {wordsMost !== undefined && lines.length > 0 && <WordCounts lines={lines} most={wordsMost} />}
    </div>
  )
}

function WordCounts({ lines, most }: { readonly lines: readonly string[]; readonly most: number }) {
  return (
    <ul className="text-small text-ink-soft">
      {lines.map((line, index) => {
        const words = countWords(line)
        const classes = words > most ? 'border-l-[7px] border-double border-ink pl-2 font-semibold text-ink' : ''
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no other name than their place
          <li key={index} className={classes}>
            {curriculaMessage('lineCount', { number: index + 1, words, most })}
          </li>
        )
      })}
    </ul>
  )
}

/** Lines that say something, at most so many. */
export function linesOf(text: string, most: number): readonly string[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .slice(0, most)
}
