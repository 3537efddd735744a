import type { Examples } from '../example'
import { SelectField } from './select-field'

const choices = [
  { value: 'painted', label: 'Painted' },
  { value: 'flags', label: 'Flags' },
  { value: 'none', label: 'Not there' },
]

export const selectFieldExamples = {
  plain: <SelectField name="example/line" label="Build-out line" choices={choices} defaultValue="flags" />,
  wrong: (
    <SelectField
      name="example/halfway"
      label="Halfway line"
      choices={choices}
      wrong="Say how it shows on the ground."
    />
  ),
} satisfies Examples
