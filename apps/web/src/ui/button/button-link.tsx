import Link from 'next/link'
import type { ReactNode } from 'react'
import { type ButtonKind, pressClasses } from './button'

type ButtonLinkProps = {
  readonly href: string
  readonly kind?: ButtonKind
  readonly className?: string
  readonly children: ReactNode
}

/** Goes to another page, and looks like a press because it is the next thing to do. */
export function ButtonLink({ href, kind = 'plain', className, children }: ButtonLinkProps) {
  return (
    <Link href={href} className={pressClasses(kind, className)}>
      {children}
    </Link>
  )
}
