import type { ReactNode } from 'react'

type OriginProps = {
  /** The word beside a number: published, study, habit, club, memory, computed. */
  readonly word: string
  /** The law, table or paper, as it is to be read when asked. */
  readonly children: ReactNode
}

/** Where a number is from: one small underlined word that opens its source. */
export function Origin({ word, children }: OriginProps) {
  return (
    <details className="inline-block align-baseline text-small text-ink-soft desk:text-fine">
      <summary className="inline-flex min-h-target list-none items-center px-px underline underline-offset-[0.25em] desk:min-h-6 [&::-webkit-details-marker]:hidden">
        {word}
      </summary>
      <span className="block max-w-text border-l border-wire pl-2">{children}</span>
    </details>
  )
}
