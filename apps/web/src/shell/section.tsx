import type { ReactNode } from 'react'

type SectionProps = {
  readonly id: string
  readonly title: string
  /** Something to do begins with a line of ink, something to read with a wire. */
  readonly kind?: 'read' | 'do'
  readonly children: ReactNode
}

/** A part of a desk page under its own heading. */
export function Section({ id, title, kind = 'read', children }: SectionProps) {
  return (
    <section
      aria-labelledby={id}
      className={`flex flex-col gap-4 border-t pt-4 ${kind === 'do' ? 'border-ink' : 'border-wire'}`}
    >
      <h2 id={id} className="text-lead leading-tight font-semibold">
        {title}
      </h2>
      {children}
    </section>
  )
}
