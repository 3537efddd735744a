import type { ComponentProps } from 'react'
import { CONTROL_CLASSES, controlAttributes, FieldRow, type FieldWords } from '../field-set/field-row'

type TextFieldProps = FieldWords & Omit<ComponentProps<'input'>, keyof FieldWords | 'id' | 'className' | 'style'>

export function TextField({ name, label, hint, wrong, type = 'text', ...rest }: TextFieldProps) {
  const words = { name, label, hint, wrong }
  return (
    <FieldRow {...words}>
      <input {...rest} {...controlAttributes(words)} type={type} className={CONTROL_CLASSES} />
    </FieldRow>
  )
}
