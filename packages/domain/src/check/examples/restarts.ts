import { at, byHand, carry, drawn, type Example, intoSpace, opponent, pass, run, step } from './example'

export const restartExamples: readonly Example[] = [
  // Rolled to the free side and played on: nothing to mend.
  {
    title: 'rolled out to the left',
    document: drawn([step('s1', byHand('roll', 'GK', 'LCB')), step('s2', pass('LCB', 'LW'))], {
      restart: 'goalkeeper-hands',
    }),
    coachSays: [],
  },
  // Nobody of ten throws over twenty metres.
  {
    title: 'thrown to the wing',
    document: drawn([step('s1', byHand('throw', 'GK', 'RW'))], { restart: 'goalkeeper-hands' }),
    coachSays: [['ball-stops-short', 's1', 'GK']],
  },
  // Passed back by a team-mate: with the feet, please.
  {
    title: 'picked up after a pass back',
    document: drawn([
      step('s1', pass('GK', 'RCB')),
      step('s2', pass('RCB', 'GK')),
      step('s3', byHand('roll', 'GK', 'LCB')),
    ]),
    coachSays: [['hands-law', 's3', 'GK']],
  },
  // Out of the hands and high: in this game that is a punt.
  {
    title: 'kicked high out of the hands',
    document: drawn(
      [step('s1', intoSpace('GK', 'RCB', at(12.5, 10), { height: 'air' }), run('RCB', at(12.5, 10), 'with-the-ball'))],
      { restart: 'goalkeeper-hands' },
    ),
    coachSays: [['punt-law', 's1', 'GK']],
  },
  // The goalkeeper may walk to the edge of the area with the ball, and not over it.
  {
    title: 'walked out of the area before it is rolled',
    document: drawn([step('s1', carry('GK', at(13, 3))), step('s2', byHand('roll', 'GK', 'CM'))], {
      restart: 'goalkeeper-hands',
      places: { CM: at(20, 3) },
    }),
    coachSays: [['hands-law', 's2', 'GK']],
  },
  // From one side of the area to the other and back with the ball in the hands: they will blow for it.
  {
    title: 'walked about with the ball in the hands',
    document: drawn(
      [step('s1', carry('GK', at(5, 10))), step('s2', carry('GK', at(5, -9))), step('s3', byHand('roll', 'GK', 'LCB'))],
      { restart: 'goalkeeper-hands', places: { LCB: at(10.9, -12) } },
    ),
    coachSays: [['goalkeeper-hold-law', 's3', 'GK']],
  },
  // A throw-in is taken where the ball went out, not four metres in.
  {
    title: 'thrown in from inside the field',
    document: drawn([step('s1', byHand('throw', 'RW', 'CM'))], {
      restart: 'throw-in',
      places: { RW: at(27.4, 14.2), CM: at(24, 8) },
    }),
    coachSays: [['throw-in-law', 's1', 'RW']],
  },
  // The opponent stands at the ball: send them back before we play. The pass itself goes the other way.
  {
    title: 'a free kick with an opponent four metres off',
    document: drawn([step('s1', pass('CM', 'LCB'))], {
      restart: 'free-kick',
      places: { CM: at(22, 0), LCB: at(12, -6) },
      obstacles: [opponent('x1', at(25.5, 1.5))],
    }),
    coachSays: [['free-kick-law', 's1', null]],
  },
]
