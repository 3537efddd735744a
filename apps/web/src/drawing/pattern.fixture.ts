import { type PatternDocument, startingPositions } from '@espalier/domain/pattern'
import type { Landmark, Spot } from '@espalier/domain/pitch'
import { assert, millimetres } from '@espalier/domain/quantities'

/** An invented pattern for examples and tests of the drawing: a goal kick in 7v7, out on the right. */
export const examplePattern: PatternDocument = {
  v: 1,
  title: 'Third man on the right',
  problem: 'They press with two',
  formatId: 'us-7v7',
  formation: '2-3-1',
  ageGroup: 'U10',
  writtenFor: 'right',
  positions: exampleStarts(),
  inPossession: [],
  onLoss: [],
  obstacles: [
    { obstacleId: 'o1', kind: 'pole', spot: spot('build-out-line-right', 0, -7) },
    { obstacleId: 'o2', kind: 'opponent', spot: spot('build-out-line-centre', 2, -3) },
  ],
  targets: [{ targetId: 't1', kind: 'goal', spot: spot('far-goal-centre', 0, 0), widthMm: millimetres(5490) }],
  restart: 'goal-kick',
  steps: [
    {
      stepId: 's1',
      action: {
        kind: 'pass',
        from: 'GK',
        to: 'RCB',
        into: { kind: 'feet' },
        height: 'ground',
        touches: 2,
        foot: 'far',
      },
      runs: [],
      point: 'Open your body first',
    },
    {
      stepId: 's2',
      action: { kind: 'carry', by: 'RCB', to: spot('penalty-area-corner-right', 5, 0), at: 'o1' },
      runs: [{ position: 'CM', to: spot('build-out-line-centre', -1, 3), start: 'with-the-ball' }],
      point: '',
    },
    {
      stepId: 's3',
      action: {
        kind: 'pass',
        from: 'RCB',
        to: 'CM',
        into: { kind: 'feet' },
        height: 'ground',
        touches: 1,
        foot: 'near',
      },
      runs: [{ position: 'RW', to: spot('halfway-right', 4, -4), start: 'with-the-ball' }],
      point: 'Look over your shoulder first',
    },
    {
      stepId: 's4',
      action: {
        kind: 'pass',
        from: 'CM',
        to: 'RW',
        into: { kind: 'space', spot: spot('halfway-right', 4, -4) },
        height: 'air',
        touches: 1,
        foot: 'either',
      },
      runs: [{ position: 'ST', to: spot('far-penalty-area-top', -2, 3), start: 'with-the-ball' }],
      point: '',
    },
    { stepId: 's5', action: { kind: 'shot', by: 'RW', target: 't1' }, runs: [], point: 'Low and across' },
  ],
  looks: [],
  teaching: {
    why: 'The third man is free when two press.',
    good: 'One touch, and the runner never stops.',
    mistakes: [],
    question: 'Who is free when they come?',
    easier: 'Without the pole.',
    harder: 'A second opponent.',
    callWords: [],
    goLong: 'When all three are shut.',
  },
}

function exampleStarts() {
  const starts = startingPositions('us-7v7', '2-3-1')
  assert(starts !== null, 'the format has this formation')
  return starts.value
}

function spot(landmark: Landmark, up: number, right: number): Spot {
  return { landmark, upMm: millimetres(up * 1000), rightMm: millimetres(right * 1000) }
}
