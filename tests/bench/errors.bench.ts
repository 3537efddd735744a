// errors.10k: ten thousand error runs of a pattern of ten steps with nine players and three opponents, against a floor written
// for this one purpose: the same arithmetic in one function over flat arrays, for the kinds of step this pattern has and no
// other. The floor is handed the compiled arrays; the figure counts compiling the document, checking it and all counting.
import { ERROR_PROFILES, errorRuns, makeErrorRunner, scaleErrors } from '../../packages/domain/src/check/index'
import { opponentAt, samplePattern, spotAt } from '../../packages/domain/src/pattern/fixtures/sample-pattern'
import type { PatternDocument, Run, Step } from '../../packages/domain/src/pattern/index'
import { nominalSpace } from '../../packages/domain/src/pitch/index'
import { runFloor } from './error-runs-floor'

const RUNS = 10_000
const SEED = 20_261_125
const ROUNDS = 21
const GOAL = 2

type Into = readonly [from: string, to: string, touches: 1 | 2]
const pass = (stepId: string, [from, to, touches]: Into, runs: readonly Run[] = []): Step => ({
  stepId,
  action: { kind: 'pass', from, to, into: { kind: 'feet' }, height: 'ground', touches, foot: 'either' },
  runs,
  point: '',
})

const document: PatternDocument = {
  ...samplePattern,
  formatId: 'us-9v9',
  formation: '3-2-3',
  ageGroup: 'U12',
  positions: [
    { position: 'GK', spot: spotAt('goal-centre', 3) },
    { position: 'LB', spot: spotAt('penalty-area-corner-left', 3, -2) },
    { position: 'CB', spot: spotAt('penalty-area-top', -3) },
    { position: 'RB', spot: spotAt('penalty-area-corner-right', 5, 1) },
    { position: 'LCM', spot: spotAt('penalty-arc-top', 6, -6) },
    { position: 'RCM', spot: spotAt('penalty-arc-top', 8, 5) },
    { position: 'LW', spot: spotAt('halfway-left', -6, 4) },
    { position: 'ST', spot: spotAt('centre-mark', 10) },
    { position: 'RW', spot: spotAt('halfway-right', -1, -3) },
  ],
  obstacles: [
    opponentAt('x1', spotAt('centre-mark', 5, 1)),
    opponentAt('x2', spotAt('centre-mark', 9, -7)),
    opponentAt('x3', spotAt('halfway-right', 12, -5)),
  ],
  targets: [],
  looks: [],
  steps: [
    pass('s1', ['GK', 'CB', 2]),
    {
      stepId: 's2',
      action: { kind: 'carry', by: 'CB', to: spotAt('penalty-area-top', 0, 2), at: null },
      runs: [{ position: 'RCM', to: spotAt('penalty-arc-top', 7, 9), start: 'with-the-ball' }],
      point: '',
    },
    pass('s3', ['CB', 'RB', 2], [{ position: 'RW', to: spotAt('halfway-right', -4, -4), start: 'with-the-ball' }]),
    {
      stepId: 's4',
      action: { kind: 'set-back', from: 'RB', to: 'RCM', into: { kind: 'feet' }, foot: 'near' },
      runs: [{ position: 'CB', to: spotAt('penalty-area-top', -4, -2), start: 'with-the-ball' }],
      point: '',
    },
    pass('s5', ['RCM', 'RB', 2], [{ position: 'RCM', to: spotAt('penalty-arc-top', 4, 7), start: 'after-the-ball' }]),
    pass(
      's6',
      ['RB', 'CB', 2],
      [{ position: 'LB', to: spotAt('penalty-area-corner-left', 1, -3), start: 'before-the-ball' }],
    ),
    pass('s7', ['CB', 'LB', 2], [{ position: 'LCM', to: spotAt('penalty-arc-top', 4, -8), start: 'with-the-ball' }]),
    pass('s8', ['LB', 'LCM', 2], [{ position: 'LW', to: spotAt('halfway-left', -8, 3), start: 'with-the-ball' }]),
    pass('s9', ['LCM', 'LW', 1]),
    {
      stepId: 's10',
      action: { kind: 'carry', by: 'LW', to: spotAt('halfway-left', 4, 4), at: null },
      runs: [],
      point: '',
    },
  ],
}

const space = nominalSpace('us-9v9')
const errors = scaleErrors(ERROR_PROFILES.U12, 0.5)

function runOurs(): number {
  const result = errorRuns(document, space, { seed: SEED, runs: RUNS, errors })
  if (!result.ok) throw new Error(`${result.refusal.code}: ${result.refusal.detail}`)
  return result.value.gotOut
}

const prepared = makeErrorRunner(document, space, { errors })
if (!prepared.ok) throw new Error(`${prepared.refusal.code}: ${prepared.refusal.detail}`)
const { program } = prepared.value
if (program.players + program.opponents !== 12 || program.steps !== 10)
  throw new Error('the pattern is not the one meant')

function time(work: () => number): { readonly milliseconds: number; readonly gotOut: number } {
  const from = performance.now()
  const gotOut = work()
  return { milliseconds: performance.now() - from, gotOut }
}

const median = (values: readonly number[]) =>
  [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)]!
const rounds = []
// The first rounds warm up; rounds of both alternate, so that a busy machine slows both alike.
for (let round = -5; round < ROUNDS; round += 1) {
  const floor = time(() => runFloor(program, SEED, RUNS))
  const ours = time(runOurs)
  if (floor.gotOut !== ours.gotOut) throw new Error(`the floor gets out ${floor.gotOut} times, the runs ${ours.gotOut}`)
  if (round >= 0) rounds.push({ ours: ours.milliseconds, floor: floor.milliseconds, gotOut: ours.gotOut })
}
const rounded = (value: number) => Math.round(value * 100) / 100
const figure = {
  figure: 'errors.10k',
  value: rounded(median(rounds.map((round) => round.ours))),
  unit: 'ms',
  floor: rounded(median(rounds.map((round) => round.floor))),
  ratio: rounded(median(rounds.map((round) => round.ours / round.floor))),
  goal: GOAL,
}
process.stdout.write(`${JSON.stringify({ ...figure, gotOut: rounds[0]?.gotOut })}\n`)
