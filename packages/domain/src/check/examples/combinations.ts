import { at, drawn, type Example, intoSpace, opponent, pass, run, setBack, step } from './example'

export const combinationExamples: readonly Example[] = [
  // CM comes short and sets it back facing the ball: that is what a set-back is for.
  {
    title: 'into the midfielder and set back',
    document: drawn([step('s1', pass('RCB', 'CM')), step('s2', setBack('CM', 'RCB'))], {
      restart: 'open-play',
      places: { CM: at(15, 4) },
    }),
    coachSays: [],
  },
  // Open body between the two centre backs: CM has both in view and plays it across at once.
  {
    title: 'across at once over the midfielder',
    document: drawn(
      [step('s1', pass('GK', 'LCB')), step('s2', pass('LCB', 'CM')), step('s3', pass('CM', 'RCB', { touches: 1 }))],
      {},
    ),
    coachSays: [],
  },
  // An opponent at the back of CM: do not try to turn, and the ball past them to the striker is theirs.
  {
    title: 'a midfielder who is marked and plays forward',
    document: drawn([step('s1', pass('RCB', 'CM')), step('s2', pass('CM', 'ST'))], {
      restart: 'open-play',
      places: { ST: at(26, -4) },
      obstacles: [opponent('x1', at(17.5, -1))],
    }),
    coachSays: [
      ['out-of-view', 's1', 'CM'],
      ['lane-closed', 's2', 'CM'],
    ],
    differs: {
      checkSays: [
        ['out-of-view', 's1', 'CM'],
        ['lane-closed', 's1', 'RCB'],
        ['lane-closed', 's2', 'CM'],
      ],
      because:
        'the lane knows no bodies: it lets the marker run round CM to the ball, while I see CM hold them off and take it to feet',
    },
  },
  // CM stands behind an opponent until the ball is on its way: the goalkeeper cannot see whom to play to. Come out before.
  {
    title: 'a midfielder who leaves the shadow too late',
    document: drawn([step('s1', intoSpace('GK', 'CM', at(13, -6)), run('CM', at(13, -6), 'with-the-ball'))], {
      restart: 'open-play',
      obstacles: [opponent('x1', at(12, 0.3))],
    }),
    coachSays: [['cover-shadow', 's1', 'CM']],
    differs: {
      checkSays: [
        ['lane-closed', 's1', 'GK'],
        ['cover-shadow', 's1', 'CM'],
      ],
      because:
        'six metres beside a slow ball into space an opponent at full speed at once gets there first; see the build-out line',
    },
  },
  // The wing comes in to where the midfielder is: one of them has to go.
  {
    title: 'a wing who runs onto the midfielder',
    document: drawn([
      step('s1', pass('GK', 'RCB'), run('RW', at(15.6, 0.3), 'with-the-ball')),
      step('s2', pass('RCB', 'CM')),
      step('s3', pass('CM', 'LCB')),
    ]),
    coachSays: [['two-in-one-place', 's2', 'CM']],
  },
  // The wing waits until the ball is there and then goes: too late.
  {
    title: 'a run that waits for the ball',
    document: drawn([
      step('s1', pass('GK', 'RCB')),
      step('s2', intoSpace('RCB', 'RW', at(20.5, 14)), run('RW', at(20.5, 14), 'after-the-ball')),
    ]),
    coachSays: [['receiver-late', 's2', 'RW']],
  },
  // CM stands in the pocket of the centre back: one opponent has both. Move away or move through.
  {
    title: 'a midfielder two metres from the ball',
    document: drawn([step('s1', pass('GK', 'RCB')), step('s2', pass('RCB', 'RW'))], {
      places: { CM: at(12.9, 9) },
    }),
    coachSays: [['support-distance', 's2', 'CM']],
  },
  // For children of eight eleven metres is a shot, not a pass.
  {
    title: 'the first build-out at U8',
    document: drawn([step('s1', pass('GK', 'RCB'))], { ageGroup: 'U8' }),
    coachSays: [['pass-too-long', 's1', 'GK']],
  },
]
