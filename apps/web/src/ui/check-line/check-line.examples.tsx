import type { Examples } from '../example'
import { CheckLine } from './check-line'

export const checkLineExamples = {
  unticked: <CheckLine name="example/came-1" label="Ezra" />,
  ticked: <CheckLine name="example/came-2" label="Ada" defaultChecked />,
  'a switch with a hint': (
    <CheckLine
      as="switch"
      name="example/coaches-adopt"
      label="Coaches may move their own team to a newer version"
      hint="It takes effect at once."
    />
  ),
} satisfies Examples
