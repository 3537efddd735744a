import type { ReactNode } from 'react'

/**
 * Says what has just changed, politely. It must stand on the page before it has something to say, else it is not heard:
 * render it always and give it words later.
 */
export function Status({ children }: { readonly children: ReactNode }) {
  return (
    <p role="status" className="min-h-6 text-small text-ink-soft">
      {children}
    </p>
  )
}
