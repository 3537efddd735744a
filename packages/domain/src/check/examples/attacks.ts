import { ASKED_HABITS } from '../limits'
import { at, carry, drawn, type Example, farGoal, intoSpace, opponent, pass, pole, run, step } from './example'

/** A side that has come over halfway. */
const HIGH = {
  LCB: at(22, -5),
  RCB: at(24, 6),
  LW: at(38, -13),
  CM: at(31, 0),
  RW: at(40, 14),
  ST: at(42, 2),
} as const

export const attackExamples: readonly Example[] = [
  // A metre before the pole is in the tackle: let go earlier.
  {
    title: 'a carry into the pole',
    document: drawn(
      [step('s1', pass('GK', 'RCB')), step('s2', carry('RCB', at(16, 9), 'p1')), step('s3', pass('RCB', 'RW'))],
      { obstacles: [pole('p1', at(17, 9))] },
    ),
    coachSays: [['carry-release', 's2', 'RCB']],
  },
  // Three metres before: they have to come, and the wing is free.
  {
    title: 'a carry that draws the pole and is let go',
    document: drawn(
      [step('s1', pass('GK', 'RCB')), step('s2', carry('RCB', at(14, 9), 'p1')), step('s3', pass('RCB', 'RW'))],
      { obstacles: [pole('p1', at(17, 9))] },
    ),
    coachSays: [],
  },
  // Seven metres before nobody comes: carry on.
  {
    title: 'a carry that draws nobody',
    document: drawn(
      [step('s1', pass('GK', 'RCB')), step('s2', carry('RCB', at(13, 9), 'p1')), step('s3', pass('RCB', 'RW'))],
      { obstacles: [pole('p1', at(20, 9))] },
    ),
    coachSays: [['carry-release', 's2', 'RCB']],
  },
  // The same against a live opponent: two against one, the ball goes outside before they can turn.
  {
    title: 'a carry that draws an opponent and is let go',
    document: drawn([step('s1', carry('RCB', at(14, 9), 'x1')), step('s2', pass('RCB', 'RW'))], {
      restart: 'open-play',
      obstacles: [opponent('x1', at(17, 9))],
    }),
    coachSays: [],
    differs: {
      checkSays: [['lane-closed', 's2', 'RCB']],
      because:
        'the opponent is taken to stand and to be at full speed at once towards the wing; one who is drawn moves the other way when the ball leaves',
    },
  },
  // The wing has run away from everybody: whoever wants the ball must come before it is played.
  {
    title: 'a wing who has outrun the team',
    document: drawn(
      [
        step('s1', pass('RCB', 'RW')),
        step('s2', carry('RW', at(38, 16))),
        step('s3', intoSpace('RW', 'ST', at(35.5, 7)), run('ST', at(35.5, 7), 'with-the-ball')),
      ],
      { restart: 'open-play' },
    ),
    coachSays: [['support-distance', 's3', 'RW']],
  },
  // Both centre backs gone: lose this ball and nobody is at home.
  {
    title: 'the last centre back goes too',
    document: drawn([step('s1', pass('RW', 'ST'), run('LCB', at(44, -3), 'before-the-ball'))], {
      restart: 'open-play',
      places: {
        ...HIGH,
        LCB: at(37, -5),
        RCB: at(45, 6),
        LW: at(44, -13),
        CM: at(43.5, -8),
        RW: at(42, 14),
        ST: at(41, 4),
      },
    }),
    coachSays: [['nobody-behind', 's1', 'ST']],
  },
  // One stays: fine.
  {
    title: 'one centre back stays',
    document: drawn([step('s1', pass('RW', 'ST'), run('LCB', at(44, -3), 'before-the-ball'))], {
      restart: 'open-play',
      places: { ...HIGH, LCB: at(37, -5), LW: at(44, -13), CM: at(43.5, -8), RW: at(42, 14), ST: at(41, 4) },
    }),
    coachSays: [],
  },
  // Two metres behind the last of them when the ball is played: offside.
  {
    title: 'a striker behind the last opponent',
    document: drawn([step('s1', pass('CM', 'ST'))], {
      restart: 'open-play',
      places: { ...HIGH, CM: at(30, -2), ST: at(38, -2), RW: at(33, 14) },
      obstacles: [opponent('x1', at(36, 16))],
    }),
    coachSays: [['offside-law', 's1', 'ST']],
  },
  // The shot goes through the pole I put there myself.
  {
    title: 'a shot through the pole',
    document: drawn([step('s1', pass('RW', 'ST')), step('s2', { kind: 'shot', by: 'ST', target: 'goal' })], {
      restart: 'open-play',
      places: { ...HIGH, RW: at(40, 11) },
      targets: [farGoal],
      obstacles: [pole('p1', at(48.4, 1))],
    }),
    coachSays: [['lane-closed', 's2', 'ST']],
  },
  // A high cross to a child who waits in the middle.
  {
    title: 'a high cross to a striker who waits',
    document: drawn([step('s1', pass('RW', 'ST', { height: 'air' }))], { restart: 'open-play', places: HIGH }),
    coachSays: [['lofted-to-standing', 's1', 'ST']],
    differs: {
      checkSays: [
        ['lofted-to-standing', 's1', 'ST'],
        ['support-distance', 's1', 'RW'],
      ],
      because:
        'the nearest team-mate is 12.2 m away, past the guess of 12 m for U10; a wing who is to cross is left alone on purpose',
    },
  },
]

/** Common practice, no source: said because a TD asked for it. */
export const habitExamples: readonly Example[] = [
  // Straight through the middle one behind the other, both balls short enough: step to the side.
  {
    title: 'habit: a striker straight behind the midfielder (common practice, no source)',
    document: drawn([step('s1', pass('GK', 'CM')), step('s2', pass('CM', 'ST'))], { places: { ST: at(27, 0.5) } }),
    options: { limits: ASKED_HABITS },
    coachSays: [['striker-straight', 's2', 'ST']],
  },
  // Off to the side by more than half a right angle: now CM sees both.
  {
    title: 'habit: a striker off to the side (common practice, no source)',
    document: drawn([step('s1', pass('GK', 'CM')), step('s2', pass('CM', 'ST'))], { places: { ST: at(22.5, 9) } }),
    options: { limits: ASKED_HABITS },
    coachSays: [],
  },
  // The ball is on the right and the left wing has crossed to the right half: who is there when it comes back?
  {
    title: 'habit: the far wing over the middle (common practice, no source)',
    document: drawn([
      step('s1', pass('GK', 'RCB')),
      step('s2', pass('RCB', 'RW'), run('LW', at(23, 2), 'before-the-ball')),
    ]),
    options: { limits: ASKED_HABITS },
    coachSays: [['weak-side-over', 's2', 'LW']],
  },
  // Both come over as far as the middle of the pitch: that is what I want to see.
  {
    title: 'habit: the far wing and centre back come over to the middle (common practice, no source)',
    document: drawn([
      step('s1', pass('GK', 'RCB'), run('LCB', at(10, -2), 'with-the-ball')),
      step('s2', pass('RCB', 'RW'), run('LW', at(21, -3), 'before-the-ball')),
    ]),
    options: { limits: ASKED_HABITS },
    coachSays: [],
  },
]
