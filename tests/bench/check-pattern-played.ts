// The pattern the figures of the check are taken on: ten steps with runs, all eleven players the largest format has (no format
// has twelve), three opponents and a pole, and one look with two answers. A working draft as it is while players are dragged:
// it draws a few notes, one of them with a remedy that has to be tried.
import { opponentAt, samplePattern, spotAt } from '../../packages/domain/src/pattern/fixtures/sample-pattern'
import { checkShape, type PatternDocument, type Run, type Step } from '../../packages/domain/src/pattern/index'

type Into = readonly [from: string, to: string, touches?: 1 | 2]

function pass(stepId: string, [from, to, touches = 2]: Into, runs: readonly Run[] = []): Step {
  return {
    stepId,
    action: { kind: 'pass', from, to, into: { kind: 'feet' }, height: 'ground', touches, foot: 'either' },
    runs,
    point: '',
  }
}

export const patternPlayed: PatternDocument = {
  ...samplePattern,
  formatId: 'ifab-11v11',
  formation: '4-3-3',
  ageGroup: 'U14',
  positions: [
    { position: 'GK', spot: spotAt('goal-centre', 4) },
    { position: 'LB', spot: spotAt('penalty-area-corner-left', 8, -8) },
    { position: 'LCB', spot: spotAt('penalty-area-top', -2, -11) },
    { position: 'RCB', spot: spotAt('penalty-area-top', -2, 11) },
    { position: 'RB', spot: spotAt('penalty-area-corner-right', 8, 8) },
    { position: 'CDM', spot: spotAt('penalty-arc-top', 5) },
    { position: 'LCM', spot: spotAt('centre-mark', -14, -12) },
    { position: 'RCM', spot: spotAt('centre-mark', -14, 12) },
    { position: 'LW', spot: spotAt('halfway-left', 4, 6) },
    { position: 'ST', spot: spotAt('centre-mark', 14) },
    { position: 'RW', spot: spotAt('halfway-right', 4, -6) },
  ],
  obstacles: [
    opponentAt('x1', spotAt('penalty-area-top', 6.5, -11)),
    opponentAt('x2', spotAt('centre-mark', 0, 2)),
    opponentAt('x3', spotAt('halfway-right', 9, -9)),
    { obstacleId: 'p1', kind: 'pole', spot: spotAt('centre-mark', 6, -4) },
  ],
  targets: [],
  restart: 'goal-kick',
  steps: [
    pass('s1', ['GK', 'LCB']),
    {
      stepId: 's2',
      action: { kind: 'carry', by: 'LCB', to: spotAt('penalty-area-top', 4, -12), at: 'x1' },
      runs: [{ position: 'CDM', to: spotAt('penalty-arc-top', 4, 6), start: 'with-the-ball' }],
      point: '',
    },
    pass('s3', ['LCB', 'LB'], [{ position: 'LCM', to: spotAt('centre-mark', -16, -18), start: 'with-the-ball' }]),
    pass('s4', ['LB', 'LCM'], [{ position: 'LW', to: spotAt('halfway-left', 0, 2), start: 'before-the-ball' }]),
    {
      stepId: 's5',
      action: { kind: 'set-back', from: 'LCM', to: 'LCB', into: { kind: 'feet' }, foot: 'near' },
      runs: [{ position: 'RCB', to: spotAt('penalty-area-top', 2, 6), start: 'with-the-ball' }],
      point: '',
    },
    pass('s6', ['LCB', 'RCB'], [{ position: 'RB', to: spotAt('halfway-right', -20, -4), start: 'before-the-ball' }]),
    pass('s7', ['RCB', 'RB'], [{ position: 'RCM', to: spotAt('centre-mark', -18, 20), start: 'with-the-ball' }]),
    pass('s8', ['RB', 'RCM'], [{ position: 'RW', to: spotAt('halfway-right', 2, -4), start: 'with-the-ball' }]),
    {
      stepId: 's9',
      action: {
        ...{ kind: 'pass', from: 'RCM', to: 'RW', height: 'ground', touches: 2, foot: 'either' },
        into: { kind: 'space', spot: spotAt('halfway-right', 8, -3) },
      },
      runs: [{ position: 'RW', to: spotAt('halfway-right', 8, -3), start: 'after-the-ball' }],
      point: '',
    },
    {
      stepId: 's10',
      action: { kind: 'carry', by: 'RW', to: spotAt('halfway-right', 18, -4), at: null },
      runs: [{ position: 'ST', to: spotAt('centre-mark', 22, 6), start: 'with-the-ball' }],
      point: '',
    },
  ],
  looks: [
    {
      lookId: 'l1',
      stepId: 's3',
      by: 'LCB',
      answers: [
        {
          sign: 'lane-shut',
          about: 'LB',
          steps: [
            pass(
              'a1',
              ['LCB', 'CDM', 1],
              [{ position: 'LB', to: spotAt('halfway-left', -24, 5), start: 'with-the-ball' }],
            ),
            pass('a2', ['CDM', 'LB']),
          ],
          rejoins: 's4',
        },
        { sign: 'all-shut', about: null, steps: [pass('a3', ['LCB', 'GK'])], rejoins: 'exit' },
      ],
    },
  ],
}

const faults = checkShape(patternPlayed)
if (faults.length > 0) throw new Error(`the pattern of the bench has no meaning: ${JSON.stringify(faults)}`)

/** The same while the striker is dragged about: a new document for every place, as the page makes one for every move. */
export function patternDragged(move: number): PatternDocument {
  const positions = patternPlayed.positions.map((each) =>
    each.position === 'ST'
      ? { ...each, spot: spotAt('centre-mark', 10 + (move % 60) / 10, (move % 37) / 5 - 4) }
      : each,
  )
  return { ...patternPlayed, positions }
}
