import type { ComponentProps, ReactNode } from 'react'
import { classNames } from '../class-names'

export type ButtonKind = 'next' | 'plain' | 'quiet'

const KINDS = {
  // At most one of these in a view: the press to make next.
  next: 'min-h-target-next border-2 border-ink bg-act px-6 text-body text-on-act no-underline',
  plain: 'min-h-target border-[1.5px] border-ink bg-sheet px-4 text-small text-ink no-underline',
  quiet: 'min-h-target px-1 text-small text-ink underline underline-offset-[0.2em]',
} satisfies Record<ButtonKind, string>

export function pressClasses(kind: ButtonKind, className?: string): string {
  return classNames(
    'no-print inline-flex items-center justify-center gap-2 rounded-cut text-center font-semibold leading-tight',
    'aria-disabled:cursor-not-allowed aria-disabled:border-dashed aria-disabled:bg-tint aria-disabled:text-ink-soft',
    KINDS[kind],
    className,
  )
}

type ButtonProps = Omit<ComponentProps<'button'>, 'disabled' | 'style'> & {
  readonly kind?: ButtonKind
  /** Why it cannot be pressed now; a press that is off always says so. It stays reachable by keyboard. */
  readonly offBecause?: string | null | undefined
  readonly children: ReactNode
}

export function Button({ kind = 'plain', type = 'button', offBecause, className, children, ...rest }: ButtonProps) {
  const off = typeof offBecause === 'string'
  const press = (
    <button
      {...rest}
      // A press that is off does nothing, in a form too.
      type={off ? 'button' : type}
      onClick={off ? undefined : rest.onClick}
      aria-disabled={off || undefined}
      className={pressClasses(kind, className)}
    >
      {children}
    </button>
  )
  if (!off) return press
  return (
    <span className="inline-flex flex-wrap items-center gap-x-3 gap-y-1">
      {press}
      <span className="text-small text-ink-soft">{offBecause}</span>
    </span>
  )
}
