import Link from 'next/link'
import type { ReactNode } from 'react'
import { classNames } from '../class-names'
import { Mark } from './mark'

export type Crumb = { readonly title: string; readonly href: string }

type PageFrameProps = {
  readonly title: string
  /** The club's own words are set in the club's voice. */
  readonly voice?: 'club' | 'tool'
  /** On top of every page: the club whose page it is, or the service's name outside any club. */
  readonly owner: Crumb
  /** The way here, from the club down; without the page itself. */
  readonly crumbs?: readonly Crumb[]
  readonly lead?: ReactNode
  /** What can be done with the whole page. */
  readonly presses?: ReactNode
  /** Who is signed in and the way out. */
  readonly account?: ReactNode
  /** A line above everything, like that the club is an invented one. */
  readonly remark?: ReactNode
  readonly words: { readonly skip: string; readonly where: string }
  readonly children: ReactNode
}

/** The frame of every desk page: the club's name, the way here, the title, then the page. */
export function PageFrame(props: PageFrameProps) {
  return (
    <div className="mx-auto flex min-h-dvh max-w-page flex-col px-4 pb-12 desk:px-8">
      {/* React lifts it into the head: every page says where one is, also to whoever only hears it. */}
      <title>{`${props.title} · ${props.owner.title}`}</title>
      <a
        href="#page"
        className="sr-only focus:not-sr-only focus:absolute focus:left-4 focus:top-2 focus:bg-sheet focus:p-3"
      >
        {props.words.skip}
      </a>
      <RunningHead {...props} />
      <main id="page" tabIndex={-1} className="flex flex-col gap-6 pt-4 outline-none">
        <div className="flex flex-wrap items-end justify-between gap-x-6 gap-y-3">
          <div className="flex min-w-0 max-w-text flex-col gap-1">
            <h1
              className={classNames(
                'text-title leading-tight',
                props.voice === 'club' ? 'voice-club font-[560]' : 'font-bold',
              )}
            >
              {props.title}
            </h1>
            {props.lead !== undefined && <div className="text-ink-soft">{props.lead}</div>}
          </div>
          {props.presses !== undefined && <div className="flex flex-wrap items-center gap-3">{props.presses}</div>}
        </div>
        {props.children}
      </main>
    </div>
  )
}

function RunningHead({ owner, crumbs = [], account, remark, words }: PageFrameProps) {
  return (
    <header className="flex flex-wrap items-center gap-x-6 border-b border-wire py-1 text-small">
      <Link href={owner.href} className="flex min-h-target items-center gap-3 text-body font-bold no-underline">
        <Mark className="size-6 shrink-0" />
        {owner.title}
      </Link>
      {remark !== undefined && <span className="text-ink-soft">{remark}</span>}
      {crumbs.length > 0 && (
        <nav aria-label={words.where} className="max-desk:order-last max-desk:w-full">
          <ol className="flex flex-wrap gap-x-2">
            {crumbs.map((crumb, index) => (
              <li key={crumb.href} className="flex items-center gap-2 text-ink-soft">
                {index > 0 && <span aria-hidden="true">/</span>}
                <Link href={crumb.href} className="inline-flex min-h-target items-center no-underline hover:underline">
                  {crumb.title}
                </Link>
              </li>
            ))}
          </ol>
        </nav>
      )}
      {account !== undefined && <div className="ml-auto flex flex-wrap items-center gap-x-4">{account}</div>}
    </header>
  )
}
