import { mirrorPattern } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'
import type { Examples } from '../ui/example'
import { AreasDrawing } from './areas-drawing'
import { examplePattern } from './pattern.fixture'
import { PatternDrawing } from './pattern-drawing'
import { PitchDrawing } from './pitch-drawing'
import { exampleAreas, exampleHalf, examplePlainSpace, exampleStops } from './set-out.fixture'
import { SetOutDrawing } from './set-out-drawing'

const pitch = nominalSpace('us-7v7')

export const drawingExamples = {
  'a pattern at the desk, step 3 read': (
    <PatternDrawing
      document={examplePattern}
      space={pitch}
      medium="desk"
      annotated
      step={2}
      letters={[
        { letter: 'a', stepId: 's1' },
        { letter: 'b', stepId: 's4' },
      ]}
    />
  ),
  'a pattern on a phone, cropped to step 2': (
    <PatternDrawing document={examplePattern} space={pitch} medium="phone" cropped step={1} />
  ),
  'a pattern on a half pitch with names': (
    <PatternDrawing
      document={mirrorPattern(examplePattern)}
      space={exampleHalf}
      medium="phone"
      step={0}
      names={{ GK: 'Cleo', LCB: 'Ada', RCB: 'Gus', CM: 'Dev', LW: 'Ben', RW: 'Ivo', ST: 'Fay' }}
    />
  ),
  'a pattern on paper, all steps': <PatternDrawing document={examplePattern} space={pitch} medium="paper" />,
  'a set-out walk, stop 3 next': <SetOutDrawing space={exampleHalf} stops={exampleStops} medium="phone" current={3} />,
  'areas on a field without lines': (
    <AreasDrawing title="Rondo" space={examplePlainSpace} areas={exampleAreas} medium="phone" />
  ),
  'the largest format, only its lines': (
    <PitchDrawing space={nominalSpace('ifab-11v11')} medium="desk" title="A full pitch" annotated />
  ),
} satisfies Examples
