'use client'

import { type ReactNode, useEffect, useId, useRef } from 'react'
import { Button } from '../button/button'

type DialogProps = {
  readonly open: boolean
  readonly title: string
  /** Called for Escape, the quiet press and the browser's own ways to close. */
  readonly onClose: () => void
  readonly closeLabel: string
  readonly children: ReactNode
  /** The presses that decide; the quiet way out is added after them. */
  readonly presses?: ReactNode
}

/** A question over the page. The browser keeps the focus inside and gives it back afterwards. */
export function Dialog({ open, title, onClose, closeLabel, children, presses }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null)
  const titleId = useId()

  useEffect(() => {
    const dialog = element.current
    if (dialog === null) return
    if (open && !dialog.open) dialog.showModal()
    if (!open && dialog.open) dialog.close()
  }, [open])

  return (
    <dialog
      ref={element}
      aria-labelledby={titleId}
      onClose={onClose}
      className="m-auto w-[min(36rem,calc(100%-2rem))] rounded-cut border-2 border-ink bg-sheet p-6 text-ink backdrop:bg-veil"
    >
      <h2 id={titleId} className="text-lead leading-tight font-semibold">
        {title}
      </h2>
      <div className="mt-3 flex flex-col gap-3">{children}</div>
      <div className="mt-6 flex flex-wrap items-center gap-4">
        {presses}
        <Button kind="quiet" onClick={onClose}>
          {closeLabel}
        </Button>
      </div>
    </dialog>
  )
}
