import type { ComponentProps } from 'react'
import { CONTROL_CLASSES, controlAttributes, FieldRow, type FieldWords } from '../field-set/field-row'

export type Choice = { readonly value: string; readonly label: string }

type SelectFieldProps = FieldWords &
  Omit<ComponentProps<'select'>, keyof FieldWords | 'id' | 'className' | 'style' | 'children'> & {
    readonly choices: readonly Choice[]
  }

export function SelectField({ name, label, hint, wrong, choices, ...rest }: SelectFieldProps) {
  const words = { name, label, hint, wrong }
  return (
    <FieldRow {...words}>
      <select {...rest} {...controlAttributes(words)} className={CONTROL_CLASSES}>
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </FieldRow>
  )
}
