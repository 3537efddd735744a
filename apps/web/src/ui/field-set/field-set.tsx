import type { ReactNode } from 'react'

type FieldSetProps = {
  readonly legend: string
  readonly hint?: string
  readonly children: ReactNode
}

/** Fields that belong together hang from one wire. */
export function FieldSet({ legend, hint, children }: FieldSetProps) {
  return (
    <fieldset className="flex min-w-0 flex-col gap-4 border-t border-wire pt-3">
      <legend className="float-left w-full text-lead leading-tight font-semibold">{legend}</legend>
      {hint !== undefined && <p className="clear-both max-w-text text-small text-ink-soft">{hint}</p>}
      {children}
    </fieldset>
  )
}
