import { ids } from './ids'

const spot = (landmark: string, upMm = 0, rightMm = 0) => ({ landmark, upMm, rightMm })

/** Two passes out on the right, unfinished in its teaching: it may be saved, not published. */
export const pattern = {
  id: ids.pattern,
  document: {
    v: 1,
    title: 'Out on the right',
    problem: 'They stand on our left',
    formatId: 'us-7v7',
    formation: '2-3-1',
    ageGroup: 'U10',
    writtenFor: 'right',
    positions: [
      { position: 'GK', spot: spot('goal-centre', 3_000) },
      { position: 'LCB', spot: spot('penalty-area-corner-left') },
      { position: 'RCB', spot: spot('penalty-area-corner-right') },
      { position: 'LW', spot: spot('build-out-line-left', 0, 2_000) },
      { position: 'CM', spot: spot('build-out-line-centre') },
      { position: 'RW', spot: spot('build-out-line-right', 0, -2_000) },
      { position: 'ST', spot: spot('centre-mark') },
    ],
    inPossession: [],
    onLoss: [],
    obstacles: [],
    targets: [],
    restart: 'goalkeeper-hands',
    steps: [
      {
        stepId: 's1',
        action: { kind: 'roll', from: 'GK', to: 'RCB', into: { kind: 'feet' } },
        runs: [],
        point: 'Open up to the touchline',
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
          foot: 'far',
        },
        runs: [],
        point: '',
      },
    ],
    looks: [],
    teaching: {
      why: 'The empty side is on the right.',
      good: 'The first touch goes forward.',
      mistakes: [],
      question: '',
      easier: '',
      harder: '',
      callWords: [],
      goLong: '',
    },
  },
} as const
