import type { ComponentProps } from 'react'
import { CONTROL_CLASSES, controlAttributes, FieldRow, type FieldWords } from '../field-set/field-row'

type NumberFieldProps = FieldWords &
  Omit<ComponentProps<'input'>, keyof FieldWords | 'id' | 'className' | 'style' | 'type' | 'inputMode'> & {
    /** As people say it: "m", "minutes", "paces". It is read out with the number. */
    readonly unit: string
  }

/**
 * A number with its unit beside it. The box is text with a digit keyboard: it keeps what was typed, so that a form can
 * say what is wrong with it, and it never changes under a scrolling thumb.
 */
export function NumberField({ name, label, unit, hint, wrong, ...rest }: NumberFieldProps) {
  const words = { name, label, hint, wrong }
  return (
    <FieldRow {...words} unit={unit}>
      <span className="flex items-baseline gap-2">
        <input
          {...rest}
          {...controlAttributes(words)}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          className={`${CONTROL_CLASSES} max-w-36 text-right tabular-nums`}
        />
        <span aria-hidden="true" className="text-ink-soft">
          {unit}
        </span>
      </span>
    </FieldRow>
  )
}
