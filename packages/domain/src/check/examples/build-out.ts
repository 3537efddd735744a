import { at, drawn, type Example, intoSpace, opponent, pass, run, step } from './example'

export const buildOutExamples: readonly Example[] = [
  // Each ball is about eleven metres, everyone has somebody near, nobody is in the way: I let them play.
  {
    title: 'goal kick, centre back, wing',
    document: drawn([step('s1', pass('GK', 'RCB')), step('s2', pass('RCB', 'RW'))]),
    coachSays: [],
  },
  // The same from where a 2-3-1 is usually drawn, the goalkeeper two metres off the line. To me that is the same picture.
  {
    title: 'the same with the goalkeeper a step and a half lower',
    document: drawn([step('s1', pass('GK', 'RCB')), step('s2', pass('RCB', 'RW'))], { places: { GK: at(2, 0) } }),
    coachSays: [],
    differs: {
      checkSays: [['pass-too-long', 's1', 'GK']],
      because:
        'the ball grows from 11.7 to 12.7 m, past the 12 m guessed for U10; the limit is a habit, and a measured team reach replaces it',
    },
  },
  // Straight up the middle and on at once: CM cannot see the striker and the ball, and no child of ten plays 17 m cleanly.
  {
    title: 'up the middle and on at once to the striker',
    document: drawn([step('s1', pass('GK', 'CM')), step('s2', pass('CM', 'ST', { touches: 1 }))]),
    coachSays: [
      ['out-of-view', 's1', 'CM'],
      ['pass-too-long', 's2', 'CM'],
    ],
  },
  // In two touches and with nobody near CM can take it on the half turn: only the long ball is a worry.
  {
    title: 'up the middle with a turn',
    document: drawn([step('s1', pass('GK', 'CM')), step('s2', pass('CM', 'ST'))]),
    coachSays: [['pass-too-long', 's2', 'CM']],
  },
  // Nobody in the way, but 28 m along the grass is no pass at ten.
  {
    title: 'goalkeeper to the striker along the ground',
    document: drawn([step('s1', pass('GK', 'ST'))]),
    coachSays: [['pass-too-long', 's1', 'GK']],
  },
  // No child of ten kicks 28 m through the air. That is all I say: whether the striker gets there does not matter then.
  {
    title: 'goalkeeper to the striker through the air',
    document: drawn([step('s1', pass('GK', 'ST', { height: 'air' }))]),
    coachSays: [['ball-stops-short', 's1', 'GK']],
  },
  // A high ball down on a child of ten who stands and waits ends at the head.
  {
    title: 'a high goal kick to a centre back who waits',
    document: drawn([step('s1', pass('GK', 'RCB', { height: 'air' }))]),
    coachSays: [['lofted-to-standing', 's1', 'RCB']],
  },
  // The same ball into the run is met with the foot.
  {
    title: 'a high goal kick into the run of the centre back',
    document: drawn([
      step('s1', intoSpace('GK', 'RCB', at(12.5, 10), { height: 'air' }), run('RCB', at(12.5, 10), 'with-the-ball')),
    ]),
    coachSays: [],
  },
  // At a goal kick they must be out of the area and, in this game, behind the line. Both are law.
  {
    title: 'an opponent who waits in the area',
    document: drawn([step('s1', pass('GK', 'RCB'))], { obstacles: [opponent('x1', at(8, -9))] }),
    coachSays: [
      ['goal-kick-law', 's1', null],
      ['build-out-line-law', 's1', null],
    ],
  },
  // The opponent waits on the line, eight metres from my centre back. The ball is there when they are: take it away from them
  // with the first touch. I would not call the ball itself a bad one.
  {
    title: 'an opponent who comes from the build-out line',
    document: drawn([step('s1', pass('GK', 'RCB'))], { obstacles: [opponent('x1', at(19.3, 9))] }),
    coachSays: [],
    differs: {
      checkSays: [['lane-closed', 's1', 'GK']],
      because:
        'a lane is measured against an opponent who is at full speed at once (the closed form of design 5); who has to get going needs about a second more',
    },
  },
]
