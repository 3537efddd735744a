import type { MouseEvent, ReactNode } from 'react'
import { goTo } from './use-address'

type ViewLinkProps = {
  readonly href: string
  readonly className?: string
  readonly onGo?: () => void
  readonly children: ReactNode
}

/** A link to another view of the same static page: an address to share and keep, followed without the server. */
export function ViewLink({ href, className, onGo, children }: ViewLinkProps) {
  function follow(event: MouseEvent) {
    if (event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey) return
    event.preventDefault()
    onGo?.()
    goTo(href)
  }
  return (
    <a href={href} className={className} onClick={follow}>
      {children}
    </a>
  )
}
