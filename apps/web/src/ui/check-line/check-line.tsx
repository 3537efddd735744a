import type { ComponentProps, ReactNode } from 'react'
import { fieldId } from '../field-set/field-id'

type CheckLineProps = Omit<ComponentProps<'input'>, 'id' | 'className' | 'style' | 'type' | 'name' | 'role'> & {
  readonly name: string
  readonly label: ReactNode
  readonly hint?: string
  /** A switch takes effect at once; a check is sent with its form. */
  readonly as?: 'check' | 'switch'
}

/** One line that can be ticked: the whole line is the target, on a wire that thickens when ticked. */
export function CheckLine({ name, label, hint, as = 'check', ...rest }: CheckLineProps) {
  const id = fieldId(name)
  const hintId = `${id}-hint`
  return (
    <div className="max-w-text border-b border-dotted border-ink-soft has-checked:border-b-2 has-checked:border-solid has-checked:border-ink">
      <label htmlFor={id} className="flex min-h-target cursor-pointer items-center gap-3">
        <input
          {...rest}
          id={id}
          name={name}
          type="checkbox"
          role={as === 'switch' ? 'switch' : undefined}
          aria-describedby={hint === undefined ? undefined : hintId}
          className="size-6 shrink-0 accent-ink"
        />
        <span className="py-1">{label}</span>
      </label>
      {hint !== undefined && (
        <p id={hintId} className="pb-2 pl-9 text-small text-ink-soft">
          {hint}
        </p>
      )}
    </div>
  )
}
