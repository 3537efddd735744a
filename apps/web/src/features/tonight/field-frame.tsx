import { type ReactNode, useEffect, useRef } from 'react'
import { shellMessage } from '../../messages/shell'
import { Mark } from '../../ui/page-frame/mark'
import { isFollowed } from './use-address'

type FieldFrameProps = {
  /** The club's own name stands on top of every page. */
  readonly club: string
  readonly team?: string
  /** What this phone and the club know of each other, in a few words. */
  readonly standing?: ReactNode
  readonly title: string
  readonly lead?: ReactNode
  /** Beside the title: one thing to change. */
  readonly aside?: ReactNode
  /** The way back, above the title. */
  readonly back?: ReactNode
  /** For the thumb: the next press, and one beside it. */
  readonly presses?: ReactNode
  readonly children?: ReactNode
}

/** The frame of every phone page: whose it is, the title, the page, and the presses within the thumb's reach. */
export function FieldFrame(props: FieldFrameProps) {
  const heading = useRef<HTMLHeadingElement>(null)
  const { title } = props
  useEffect(() => {
    document.title = `${title} · ${shellMessage('product')}`
    // Who followed a link inside the page hears the new title; who has just opened it keeps the page's start.
    if (isFollowed()) heading.current?.focus()
  }, [title])
  return (
    <div className="mx-auto flex min-h-dvh max-w-text flex-col px-4">
      <header className="flex min-h-14 flex-wrap items-center justify-between gap-x-4 py-1 text-small">
        <span className="inline-flex items-center gap-3 leading-tight">
          <Mark className="size-6 shrink-0" />
          <span>
            <span className="block font-bold">{props.club}</span>
            {props.team !== undefined && <span className="block text-ink-soft">{props.team}</span>}
          </span>
        </span>
        {props.standing}
      </header>
      <main className="flex flex-1 flex-col">
        <div className="flex flex-1 flex-col gap-4 pb-8">
          <div className="flex flex-col">
            {props.back}
            <div className="flex flex-wrap items-baseline justify-between gap-x-4">
              <h1 ref={heading} tabIndex={-1} className="text-title leading-tight font-bold outline-none">
                {title}
              </h1>
              {props.aside}
            </div>
            {props.lead !== undefined && <div className="text-ink-soft">{props.lead}</div>}
          </div>
          {props.children}
        </div>
        {props.presses !== undefined && (
          <div className="no-print sticky bottom-0 z-20 -mx-4 flex gap-3 border-t-2 border-ink bg-sheet px-4 py-3">
            {props.presses}
          </div>
        )}
      </main>
    </div>
  )
}

/** One part of a page: a wire, its heading, and a figure at its right end. */
export function FieldSection({
  title,
  figure,
  children,
}: {
  readonly title: string
  readonly figure?: ReactNode
  readonly children: ReactNode
}) {
  return (
    <section className="flex flex-col gap-2">
      <div className="flex flex-wrap items-baseline justify-between gap-x-4">
        <h2 className="text-body font-bold">{title}</h2>
        {figure !== undefined && <p className="font-bold">{figure}</p>}
      </div>
      {children}
    </section>
  )
}
