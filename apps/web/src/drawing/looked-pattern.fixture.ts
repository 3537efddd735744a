import type { PatternDocument, Position, Step } from '@espalier/domain/pattern'
import { examplePattern } from './pattern.fixture'

/** The example with a look before its third step: the way to CM shut, or all shut. */
export const lookedPattern: PatternDocument = {
  ...examplePattern,
  looks: [
    {
      lookId: 'l1',
      stepId: 's3',
      by: 'RCB',
      answers: [
        { sign: 'lane-shut', about: 'CM', steps: [passToFeet('a1', 'RCB', 'RW')], rejoins: 'exit' },
        { sign: 'all-shut', about: null, steps: [passToFeet('a2', 'RCB', 'GK')], rejoins: 'exit' },
      ],
    },
  ],
}

function passToFeet(stepId: string, from: Position, to: Position): Step {
  return {
    stepId,
    action: { kind: 'pass', from, to, into: { kind: 'feet' }, height: 'ground', touches: 2, foot: 'either' },
    runs: [],
    point: '',
  }
}
