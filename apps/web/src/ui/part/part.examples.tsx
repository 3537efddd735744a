import type { Examples } from '../example'
import { Part, PartInput, PartSelect } from './part'

export const partExamples = {
  'a press in a sentence': (
    <p className="voice-club text-script">
      <Part>GK</Part> passes to <Part>RCB</Part>, <Part>to feet</Part>.
    </p>
  ),
  'a choice in a sentence': (
    <p>
      Run it at{' '}
      <PartSelect
        label="Speed"
        defaultValue="half"
        choices={[
          { value: 'real', label: 'real speed' },
          { value: 'half', label: 'half speed' },
        ]}
      />
      .
    </p>
  ),
  'a number in a sentence': (
    <p>
      Your pace is <PartInput label="Pace in centimetres" inputMode="numeric" defaultValue="80" /> cm.
    </p>
  ),
} satisfies Examples
