import type { ReactNode } from 'react'
import { fieldId } from './field-id'

export type FieldWords = {
  /** The place in the body, as in a JSON Pointer without its first slash. */
  readonly name: string
  readonly label: string
  readonly hint?: string | undefined
  /** What is wrong with it, from the form or from a problem's pointer. */
  readonly wrong?: string | undefined
}

const hintId = (name: string) => `${fieldId(name)}-hint`
const wrongId = (name: string) => `${fieldId(name)}-wrong`

/** The attributes that tie a control to its label, its hint and what is wrong with it. */
export function controlAttributes({ name, hint, wrong }: FieldWords) {
  const described = [hint === undefined ? null : hintId(name), wrong === undefined ? null : wrongId(name)]
  const describedBy = described.filter((id) => id !== null).join(' ')
  return {
    id: fieldId(name),
    name,
    'aria-invalid': wrong === undefined ? undefined : (true as const),
    'aria-describedby': describedBy === '' ? undefined : describedBy,
  }
}

/** A field wears an ink edge all round; one that is to fix has the double rule that "to fix" has everywhere. */
export const CONTROL_CLASSES =
  'min-h-target w-full rounded-cut border-[1.5px] border-ink bg-sheet px-3 text-body text-ink aria-invalid:border-l-[7px] aria-invalid:border-double'

type FieldRowProps = FieldWords & {
  /** Read out with the label; the page shows it beside the number. */
  readonly unit?: string
  readonly children: ReactNode
}

/** A label above its control, its hint, and what is wrong with it. */
export function FieldRow({ name, label, unit, hint, wrong, children }: FieldRowProps) {
  return (
    <div className="flex max-w-text flex-col gap-1">
      <label htmlFor={fieldId(name)} className="font-semibold">
        {label}
        {unit !== undefined && <span className="sr-only"> ({unit})</span>}
      </label>
      {hint !== undefined && (
        <p id={hintId(name)} className="text-small text-ink-soft">
          {hint}
        </p>
      )}
      {children}
      {wrong !== undefined && (
        <p id={wrongId(name)} className="border-l-[7px] border-double border-ink pl-2 text-small font-semibold">
          {wrong}
        </p>
      )}
    </div>
  )
}
