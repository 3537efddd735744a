import type { ComponentProps } from 'react'
import { CONTROL_CLASSES, controlAttributes, FieldRow, type FieldWords } from '../field-set/field-row'

type TextAreaFieldProps = FieldWords & Omit<ComponentProps<'textarea'>, keyof FieldWords | 'id' | 'className' | 'style'>

/** For words of more than one line: it grows with what is written where the browser can. */
export function TextAreaField({ name, label, hint, wrong, rows = 3, ...rest }: TextAreaFieldProps) {
  const words = { name, label, hint, wrong }
  return (
    <FieldRow {...words}>
      <textarea
        {...rest}
        {...controlAttributes(words)}
        rows={rows}
        className={`${CONTROL_CLASSES} field-sizing-content py-2`}
      />
    </FieldRow>
  )
}
