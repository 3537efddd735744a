import type { PatternDocument } from '@espalier/domain/pattern'
import { spotAt } from './spots'

/** 9v9, U12: the centre back carries until a presser has to come, and plays round whoever came. */
export const carryUntilOneComes: PatternDocument = {
  v: 1,
  title: 'Carry until one comes',
  problem: 'They stand off and shut every pass, but nobody presses the ball',
  formatId: 'us-9v9',
  formation: '3-2-3',
  ageGroup: 'U12',
  writtenFor: 'right',
  positions: [
    { position: 'GK', spot: spotAt('goal-centre', 3) },
    { position: 'LB', spot: spotAt('penalty-area-corner-left', 3, -2) },
    { position: 'CB', spot: spotAt('penalty-area-top', -3) },
    { position: 'RB', spot: spotAt('penalty-area-corner-right', 5, 1) },
    { position: 'LCM', spot: spotAt('penalty-arc-top', 6, -6) },
    { position: 'RCM', spot: spotAt('penalty-arc-top', 8, 5) },
    { position: 'LW', spot: spotAt('halfway-left', 4, 2) },
    { position: 'ST', spot: spotAt('centre-mark', 10) },
    { position: 'RW', spot: spotAt('halfway-right', -1, -3) },
  ],
  inPossession: [],
  onLoss: [],
  obstacles: [
    { obstacleId: 'p1', kind: 'pole', spot: spotAt('penalty-arc-top', 3, 1) },
    { obstacleId: 'p2', kind: 'pole', spot: spotAt('penalty-arc-top', 11, 2) },
  ],
  targets: [],
  restart: 'goal-kick',
  steps: [
    {
      stepId: 's1',
      action: {
        kind: 'pass',
        from: 'GK',
        to: 'CB',
        into: { kind: 'feet' },
        height: 'ground',
        touches: 2,
        foot: 'either',
      },
      runs: [],
      point: 'Turn as it comes',
    },
    {
      stepId: 's2',
      action: { kind: 'carry', by: 'CB', to: spotAt('penalty-arc-top', -0.5, 1), at: 'p1' },
      runs: [{ position: 'RCM', to: spotAt('penalty-arc-top', 9, 7), start: 'with-the-ball' }],
      point: 'Slowly, straight at the pole',
    },
    {
      stepId: 's3',
      action: {
        kind: 'pass',
        from: 'CB',
        to: 'RB',
        into: { kind: 'feet' },
        height: 'ground',
        touches: 2,
        foot: 'far',
      },
      runs: [{ position: 'RCM', to: spotAt('penalty-arc-top', 7, 9), start: 'with-the-ball' }],
      point: 'Once they come, not before',
    },
    {
      stepId: 's4',
      action: { kind: 'set-back', from: 'RB', to: 'RCM', into: { kind: 'feet' }, foot: 'near' },
      runs: [{ position: 'RW', to: spotAt('halfway-right', 6, -6), start: 'after-the-ball' }],
      point: 'First time, inside',
    },
    {
      stepId: 's5',
      action: {
        kind: 'pass',
        from: 'RCM',
        to: 'RW',
        into: { kind: 'space', spot: spotAt('halfway-right', 6, -6) },
        height: 'ground',
        touches: 2,
        foot: 'far',
      },
      runs: [{ position: 'ST', to: spotAt('centre-mark', 16, -3), start: 'with-the-ball' }],
      point: 'Into the run',
    },
    {
      stepId: 's6',
      action: { kind: 'carry', by: 'RW', to: spotAt('halfway-right', 15, -7), at: null },
      runs: [{ position: 'LW', to: spotAt('halfway-left', 16, 8), start: 'with-the-ball' }],
      point: 'Head up, go',
    },
  ],
  looks: [
    {
      lookId: 'l1',
      stepId: 's3',
      by: 'CB',
      answers: [
        {
          sign: 'presser-stays-off',
          about: null,
          steps: [
            {
              stepId: 'a1',
              action: { kind: 'carry', by: 'CB', to: spotAt('penalty-arc-top', 8, -2), at: null },
              runs: [{ position: 'RW', to: spotAt('halfway-right', -2, -9), start: 'with-the-ball' }],
              point: 'Nobody? Keep going',
            },
            {
              stepId: 'a2',
              action: {
                kind: 'pass',
                from: 'CB',
                to: 'RW',
                into: { kind: 'feet' },
                height: 'ground',
                touches: 1,
                foot: 'either',
              },
              runs: [],
              point: '',
            },
          ],
          rejoins: 's6',
        },
        {
          sign: 'lane-shut',
          about: 'RB',
          steps: [
            {
              stepId: 'a3',
              action: {
                kind: 'pass',
                from: 'CB',
                to: 'RCM',
                into: { kind: 'feet' },
                height: 'ground',
                touches: 1,
                foot: 'near',
              },
              runs: [],
              point: 'Past the one who went wide',
            },
          ],
          rejoins: 's5',
        },
        {
          sign: 'all-shut',
          about: null,
          steps: [
            {
              stepId: 'a4',
              action: {
                kind: 'pass',
                from: 'CB',
                to: 'ST',
                into: { kind: 'space', spot: spotAt('centre-mark', 1, 5) },
                height: 'air',
                touches: 1,
                foot: 'either',
              },
              runs: [{ position: 'ST', to: spotAt('centre-mark', 1, 5), start: 'before-the-ball' }],
              point: 'Over them, into the gap',
            },
          ],
          rejoins: 'exit',
        },
      ],
    },
  ],
  teaching: {
    why: 'A team that stands off has to be made to move: someone must come to the ball, and leaves a gap behind.',
    good: 'The centre back carries calmly at one opponent and passes at the moment that opponent steps forward.',
    mistakes: [
      { seen: 'The ball is passed before anyone has moved', change: 'Carry two more metres and watch their feet' },
      {
        seen: 'The carry is too fast to pass out of',
        change: 'Small touches: the ball never further than a step away',
      },
    ],
    question: 'What did the opponent leave open when they came to you?',
    easier: 'No poles: count two steps aloud before the pass.',
    harder: 'A live defender starts at the pole and chooses whether to come.',
    callWords: ['hold', 'now'],
    goLong: 'When the one who comes shuts both the back and the midfielder: over them to the striker.',
  },
}
