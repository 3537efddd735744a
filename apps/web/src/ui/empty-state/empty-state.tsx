import type { ReactNode } from 'react'

type EmptyStateProps = {
  /** What is not there yet, in one sentence. */
  readonly children: ReactNode
  /** What to do about it: one press or link. */
  readonly next?: ReactNode
}

/** A bare wire with a sentence: the place where things will hang. */
export function EmptyState({ children, next }: EmptyStateProps) {
  return (
    <div className="flex max-w-text flex-col items-start gap-4 border-t border-dotted border-ink-soft py-4">
      <p>{children}</p>
      {next}
    </div>
  )
}
