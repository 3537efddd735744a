import type { PatternDocument } from '@espalier/domain/pattern'
import { spotAt } from './spots'

/** 7v7, U10: a third man. The ball goes wide and comes back inside to the one the presser forgot. */
export const wallOnTheRight: PatternDocument = {
  v: 1,
  title: 'Off the wall on the right',
  problem: 'One of theirs stands in front of our midfielder',
  formatId: 'us-7v7',
  formation: '2-3-1',
  ageGroup: 'U10',
  writtenFor: 'right',
  positions: [
    { position: 'GK', spot: spotAt('goal-centre', 3) },
    { position: 'LCB', spot: spotAt('penalty-area-corner-left', 0, 3) },
    { position: 'RCB', spot: spotAt('penalty-area-corner-right', 0, -3) },
    { position: 'LW', spot: spotAt('build-out-line-left', 0, 2) },
    { position: 'CM', spot: spotAt('penalty-arc-top', 0, -1) },
    { position: 'RW', spot: spotAt('build-out-line-right', 0, -3) },
    { position: 'ST', spot: spotAt('far-build-out-line-centre', -3, -2) },
  ],
  inPossession: [],
  onLoss: [],
  obstacles: [
    { obstacleId: 'p1', kind: 'pole', spot: spotAt('penalty-arc-top', 1, 1.5) },
    { obstacleId: 'p2', kind: 'pole', spot: spotAt('centre-mark', 1, 1) },
  ],
  targets: [],
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
      point: 'Side on before it comes',
    },
    {
      stepId: 's2',
      action: {
        kind: 'pass',
        from: 'RCB',
        to: 'RW',
        into: { kind: 'feet' },
        height: 'ground',
        touches: 2,
        foot: 'near',
      },
      runs: [{ position: 'CM', to: spotAt('build-out-line-centre', 3, 7), start: 'with-the-ball' }],
      point: 'Firm, so the wall can bounce',
    },
    {
      stepId: 's3',
      action: {
        kind: 'set-back',
        from: 'RW',
        to: 'CM',
        into: { kind: 'space', spot: spotAt('build-out-line-centre', 3, 7) },
        foot: 'near',
      },
      runs: [],
      point: 'One touch, ahead of the runner',
    },
    {
      stepId: 's4',
      action: { kind: 'carry', by: 'CM', to: spotAt('centre-mark', 0, 5), at: 'p2' },
      runs: [
        { position: 'RW', to: spotAt('halfway-right', 7, -5), start: 'with-the-ball' },
        { position: 'LW', to: spotAt('halfway-left', 4, 4), start: 'with-the-ball' },
      ],
      point: 'Drive at the space',
    },
    {
      stepId: 's5',
      action: {
        kind: 'pass',
        from: 'CM',
        to: 'RW',
        into: { kind: 'space', spot: spotAt('halfway-right', 7, -5) },
        height: 'ground',
        touches: 1,
        foot: 'either',
      },
      runs: [],
      point: 'Pass when the pole is near',
    },
  ],
  looks: [
    {
      lookId: 'l1',
      stepId: 's2',
      by: 'RCB',
      answers: [
        {
          sign: 'lane-shut',
          about: 'RW',
          steps: [
            {
              stepId: 'a1',
              action: {
                kind: 'pass',
                from: 'RCB',
                to: 'CM',
                into: { kind: 'space', spot: spotAt('build-out-line-centre', 0, 5) },
                height: 'ground',
                touches: 2,
                foot: 'either',
              },
              runs: [{ position: 'CM', to: spotAt('build-out-line-centre', 0, 5), start: 'before-the-ball' }],
              point: 'Wide shut? Inside is open',
            },
          ],
          rejoins: 's4',
        },
        {
          sign: 'all-shut',
          about: null,
          steps: [
            {
              stepId: 'a2',
              action: {
                kind: 'pass',
                from: 'RCB',
                to: 'RW',
                into: { kind: 'space', spot: spotAt('build-out-line-right', 3.5, -4) },
                height: 'air',
                touches: 2,
                foot: 'either',
              },
              runs: [{ position: 'RW', to: spotAt('build-out-line-right', 3.5, -4), start: 'with-the-ball' }],
              point: 'Over them, down the line',
            },
          ],
          rejoins: 'exit',
        },
      ],
    },
  ],
  teaching: {
    why: 'A player who cannot be reached directly can be reached in two passes, if a third one is moving.',
    good: 'The midfielder starts to run as the ball goes wide and meets the set-back without stopping.',
    mistakes: [
      { seen: 'The midfielder waits for the ball and the pole is between', change: 'Run as the back plays, not after' },
      { seen: 'The set-back goes behind the runner', change: 'Play it where the runner will be: a long step ahead' },
    ],
    question: 'Who could see the midfielder when the back could not?',
    easier: 'The wide player takes two touches, and the pole stands a step further away.',
    harder: 'The pole becomes a walking defender who may follow either the wide player or the midfielder.',
    callWords: ['bounce', 'through'],
    goLong: 'When the back sees neither the wide player nor the midfielder free: over the press, down the line.',
  },
}
