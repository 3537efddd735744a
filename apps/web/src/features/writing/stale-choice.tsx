'use client'

import { useEffect, useRef } from 'react'
import { writingMessage } from '../../messages/writing'
import { Button } from '../../ui/button/button'

type StaleChoiceProps = {
  /** The version someone else saved. */
  readonly version: number
  /** Both documents as lines of plain words. */
  readonly mine: readonly string[]
  readonly theirs: readonly string[]
  readonly onKeepMine: () => void
  readonly onTakeTheirs: () => void
}

/** Two versions side by side after a clash: what stands only in one of them is marked, and the writer decides. */
export function StaleChoice({ version, mine, theirs, onKeepMine, onTakeTheirs }: StaleChoiceProps) {
  const element = useRef<HTMLElement>(null)
  // It stands at the top of a long page and is what the press has led to.
  useEffect(() => element.current?.focus(), [])
  return (
    <section
      ref={element}
      tabIndex={-1}
      aria-labelledby="stale"
      className="no-print flex flex-col gap-3 border-l-[7px] border-double border-ink pl-4"
    >
      <h2 id="stale" className="text-lead leading-tight font-semibold">
        {writingMessage('staleTitle', { version })}
      </h2>
      <p className="max-w-text">{writingMessage('staleLead')}</p>
      <div className="grid gap-x-8 gap-y-4 desk:grid-cols-2">
        <VersionLines title={writingMessage('staleMine')} lines={mine} others={theirs} />
        <VersionLines title={writingMessage('staleTheirs', { version })} lines={theirs} others={mine} />
      </div>
      <div className="flex flex-wrap gap-4">
        <Button onClick={onKeepMine}>{writingMessage('keepMine')}</Button>
        <Button onClick={onTakeTheirs}>{writingMessage('takeTheirs')}</Button>
      </div>
    </section>
  )
}

type VersionLinesProps = {
  readonly title: string
  readonly lines: readonly string[]
  readonly others: readonly string[]
}

function VersionLines({ title, lines, others }: VersionLinesProps) {
  return (
    <div className="min-w-0 border-t border-wire pt-2">
      <h3 className="font-semibold">{title}</h3>
      <ul className="voice-club">
        {lines.map((line, index) => {
          const isOnlyHere = !others.includes(line)
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: lines may repeat and are never reordered here
            <li key={index} className={isOnlyHere ? 'border-l-2 border-ink bg-here pl-2' : 'pl-2.5 text-ink-soft'}>
              {line}
              {isOnlyHere && <span className="sr-only"> ({writingMessage('onlyHere')})</span>}
            </li>
          )
        })}
      </ul>
    </div>
  )
}
