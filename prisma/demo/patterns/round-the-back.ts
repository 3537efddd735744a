import type { PatternDocument } from '@espalier/domain/pattern'
import { spotAt } from './spots'

/** 7v7, U10: a switch through the goalkeeper, from a crowded left to an empty right. */
export const roundTheBack: PatternDocument = {
  v: 1,
  title: 'Round the back and out',
  problem: 'They all come over to the side the ball is on',
  formatId: 'us-7v7',
  formation: '2-3-1',
  ageGroup: 'U10',
  writtenFor: 'right',
  positions: [
    { position: 'GK', spot: spotAt('goal-centre', 3) },
    { position: 'LCB', spot: spotAt('penalty-area-corner-left', 0, 3) },
    { position: 'RCB', spot: spotAt('penalty-area-corner-right', 0, -3) },
    { position: 'LW', spot: spotAt('build-out-line-left', 0, 2) },
    { position: 'CM', spot: spotAt('penalty-arc-top') },
    { position: 'RW', spot: spotAt('build-out-line-right', 2, -2) },
    { position: 'ST', spot: spotAt('far-build-out-line-centre', -3) },
  ],
  inPossession: [],
  onLoss: [],
  obstacles: [
    { obstacleId: 'p1', kind: 'pole', spot: spotAt('penalty-area-corner-left', 4, 4) },
    { obstacleId: 'p2', kind: 'pole', spot: spotAt('build-out-line-right', -1, -8) },
  ],
  targets: [],
  restart: 'goalkeeper-hands',
  steps: [
    {
      stepId: 's1',
      action: { kind: 'roll', from: 'GK', to: 'LCB', into: { kind: 'feet' } },
      runs: [{ position: 'GK', to: spotAt('goal-centre', 4, -1), start: 'after-the-ball' }],
      point: 'Roll, then be free again',
    },
    {
      stepId: 's2',
      action: {
        kind: 'pass',
        from: 'LCB',
        to: 'GK',
        into: { kind: 'feet' },
        height: 'ground',
        touches: 2,
        foot: 'near',
      },
      runs: [{ position: 'RCB', to: spotAt('penalty-area-corner-right', -1, -2), start: 'with-the-ball' }],
      point: 'Let them come, then back',
    },
    {
      stepId: 's3',
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
      point: 'Across in two touches',
    },
    {
      stepId: 's4',
      action: { kind: 'carry', by: 'RCB', to: spotAt('penalty-area-corner-right', 5, -1), at: 'p2' },
      runs: [{ position: 'RW', to: spotAt('halfway-right', -3, -2), start: 'with-the-ball' }],
      point: 'Room ahead? Take it',
    },
    {
      stepId: 's5',
      action: {
        kind: 'pass',
        from: 'RCB',
        to: 'RW',
        into: { kind: 'feet' },
        height: 'ground',
        touches: 1,
        foot: 'either',
      },
      runs: [{ position: 'CM', to: spotAt('centre-mark', -4, 5), start: 'with-the-ball' }],
      point: 'Round the pole, not through',
    },
  ],
  looks: [
    {
      lookId: 'l1',
      stepId: 's3',
      by: 'GK',
      answers: [
        {
          sign: 'lane-shut',
          about: 'RCB',
          steps: [
            {
              stepId: 'a1',
              action: {
                kind: 'pass',
                from: 'GK',
                to: 'CM',
                into: { kind: 'space', spot: spotAt('penalty-arc-top', -1, 1) },
                height: 'ground',
                touches: 2,
                foot: 'either',
              },
              runs: [{ position: 'CM', to: spotAt('penalty-arc-top', -1, 1), start: 'before-the-ball' }],
              point: 'Middle open? Through it, turn',
            },
          ],
          rejoins: 'exit',
        },
        {
          sign: 'all-shut',
          about: null,
          steps: [
            {
              stepId: 'a3',
              action: {
                kind: 'pass',
                from: 'GK',
                to: 'CM',
                into: { kind: 'space', spot: spotAt('build-out-line-centre', -0.5, -2.5) },
                height: 'air',
                touches: 2,
                foot: 'either',
              },
              runs: [{ position: 'CM', to: spotAt('build-out-line-centre', -0.5, -2.5), start: 'with-the-ball' }],
              point: 'High over the first line',
            },
          ],
          rejoins: 'exit',
        },
      ],
    },
  ],
  teaching: {
    why: 'When everyone leans to one side the other is empty, and the goalkeeper is the quickest way round.',
    good: 'The goalkeeper is free again before the back has turned, and the far back has already gone wide.',
    mistakes: [
      {
        seen: 'The goalkeeper stays where the ball was rolled from',
        change: 'Two steps to where the back can see you',
      },
      {
        seen: 'The far back comes towards the ball',
        change: 'Go wide: the pass across should find you facing forward',
      },
    ],
    question: 'Where were most of them standing when the ball came back to the goalkeeper?',
    easier: 'The far back starts wide already, and the goalkeeper has as many touches as they like.',
    harder: 'A walking defender follows the pass back to the goalkeeper.',
    callWords: ['back', 'other side'],
    goLong:
      'When the far back is marked and nobody short is free: high over the first line, for the midfielder to run onto.',
  },
}
