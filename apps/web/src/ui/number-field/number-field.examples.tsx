import type { Examples } from '../example'
import { NumberField } from './number-field'

export const numberFieldExamples = {
  'with its unit': <NumberField name="example/length" label="Length" unit="m" defaultValue="36.6" />,
  wrong: (
    <NumberField
      name="example/width"
      label="Width"
      unit="m"
      defaultValue="wide"
      wrong="Write a number between 5 and 150."
    />
  ),
} satisfies Examples
