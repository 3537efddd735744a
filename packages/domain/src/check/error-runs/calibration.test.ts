import { describe, expect, test } from 'vitest'
import { DEMO_PATTERNS } from '../../../../../prisma/demo/patterns'
import { firstSteps, listBranches, type PatternDocument } from '../../pattern'
import { opponentAt, passStep, samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace } from '../../pitch'
import { placerFor } from '../places'
import { profileFor } from '../profiles'
import { BALL_DECELERATION } from '../surfaces'
import { bitsFor, firstWord, normalFromBits, secondWord } from './deviates'
import { ERROR_PROFILES, scaleErrors } from './error-profile'
import { TICK_SECONDS } from './fixtures/clock-world'
import { simulateRun } from './fixtures/twenty-hertz'
import { makeMemory, RECEIVED_AT } from './memory'
import { GOT_OUT, playRun } from './play-run'
import { compileProgram } from './program'

const SEED = 7

const [wall, back, carry] = DEMO_PATTERNS

/** With opponents beside the ways, near enough to get some balls and not others. */
const pressedWall: PatternDocument = {
  ...wall,
  obstacles: [
    ...wall.obstacles,
    opponentAt('x1', spotAt('centre-mark', 15, -4)),
    opponentAt('x2', spotAt('far-build-out-line-centre', 15, 4)),
  ],
}
const pressedBack: PatternDocument = {
  ...back,
  obstacles: [
    ...back.obstacles,
    opponentAt('x1', spotAt('centre-mark', 2, -4)),
    opponentAt('x2', spotAt('halfway-right', 6, -9)),
  ],
}
const pressedCarry: PatternDocument = {
  ...carry,
  obstacles: [
    ...carry.obstacles,
    opponentAt('x1', spotAt('centre-mark', 10, -12)),
    opponentAt('x2', spotAt('far-penalty-area-top', 5, -4)),
    opponentAt('x3', spotAt('far-penalty-area-top', 15, 4)),
  ],
}
const adults: PatternDocument = { ...pressedCarry, ageGroup: 'adult' }
const youngest: PatternDocument = { ...back, ageGroup: 'U8' }
/** A runner who sets off only as the ball leaves, and so comes late to it. */
const late: PatternDocument = {
  ...samplePattern,
  looks: [],
  steps: [
    passStep('s1', 'GK', 'RCB'),
    {
      ...passStep('s2', 'RCB', 'CM'),
      action: {
        kind: 'pass',
        from: 'RCB',
        to: 'CM',
        into: { kind: 'space', spot: spotAt('build-out-line-centre', 1, 9) },
        height: 'ground',
        touches: 2,
        foot: 'either',
      },
      runs: [{ position: 'CM', to: spotAt('build-out-line-centre', 1, 9), start: 'with-the-ball' }],
    },
    passStep('s3', 'CM', 'ST'),
  ],
}
/** A ball over everyone, brought under control where it comes down, and played on. */
const over: PatternDocument = {
  ...samplePattern,
  looks: [],
  steps: [
    {
      ...passStep('s1', 'RCB', 'CM'),
      action: {
        kind: 'pass',
        from: 'RCB',
        to: 'CM',
        into: { kind: 'space', spot: spotAt('build-out-line-centre', 1, 2) },
        height: 'air',
        touches: 2,
        foot: 'either',
      },
      runs: [{ position: 'CM', to: spotAt('build-out-line-centre', 1, 2), start: 'before-the-ball' }],
    },
    passStep('s2', 'CM', 'RW'),
    {
      stepId: 's3',
      action: { kind: 'carry', by: 'RW', to: spotAt('halfway-right', 0, -3), at: null },
      runs: [],
      point: '',
    },
  ],
}
const branches = [wall, back].flatMap((document) => listBranches(document)).map((branch) => branch.document)

const PATTERNS: readonly (readonly [string, PatternDocument])[] = [
  ['wall', wall],
  ['back', back],
  ['carry', carry],
  ['wall, first two', firstSteps(wall, 2)],
  ['back, first three', firstSteps(back, 3)],
  ['carry, first four', firstSteps(carry, 4)],
  ['wall against two', pressedWall],
  ['back against two', pressedBack],
  ['carry against three', pressedCarry],
  ['adults against three', adults],
  ['the youngest', youngest],
  ['a late runner', late],
  ['over and on', over],
  ...branches.map((document, at): readonly [string, PatternDocument] => [`answer ${at + 1}`, document]),
]

type Shares = {
  readonly byKernel: number
  readonly byClock: number
  readonly unlike: number
  /** How much later the clock has the last ball received, where both got out: the mean, and the largest either way. */
  readonly laterSeconds: number
  readonly apartSeconds: number
}

function playBoth(document: PatternDocument, runs: number, tick: number = TICK_SECONDS, times = 1): Shares {
  const space = nominalSpace(document.formatId)
  const profile = profileFor(document.ageGroup)
  const errors = scaleErrors(ERROR_PROFILES[profile.profileId], times)
  const program = compileProgram(document, space, {
    profile,
    errors: ERROR_PROFILES[profile.profileId],
    surface: 'normal',
  })
  const memory = makeMemory(program)
  const stage = { document, space, profile, errors, deceleration: BALL_DECELERATION.normal.value, tick }
  const place = placerFor(document, space)
  let [byKernel, byClock, unlike] = [0, 0, 0]
  const later: number[] = []
  for (let run = 0; run < runs; run += 1) {
    const deviates = (step: number, quantity: number) =>
      normalFromBits(bitsFor(firstWord(SEED, run), secondWord(SEED, run), step, quantity))
    const kernel = playRun(program, memory, SEED, run) === GOT_OUT
    const clock = simulateRun(stage, place, deviates)
    if (kernel) byKernel += 1 / runs
    if (clock !== null) byClock += 1 / runs
    if (kernel !== (clock !== null)) unlike += 1 / runs
    if (kernel && clock !== null) later.push(clock - memory.now[RECEIVED_AT]!)
  }
  const laterSeconds = later.reduce((sum, each) => sum + each, 0) / later.length
  return { byKernel, byClock, unlike, laterSeconds, apartSeconds: Math.max(...later.map(Math.abs)) }
}

/*
 * Measured, share got out by the kernel less share got out by the clock at 20 Hz, 600 runs each of the same errors:
 *   wall 0.000, back +0.002, carry +0.003; their cuts −0.003, +0.002, +0.007; against opponents +0.002, +0.008, +0.002;
 *   adults against three +0.023; the youngest +0.003; a late runner 0.000; answers +0.002, +0.003, 0.000, +0.002.
 * At most 0.023, where balls are fast and opponents near: a clock sees a ball received up to a tick late, and gives them that
 * time. At 200 Hz, of 400 runs of every pattern (6,400) 5 end otherwise, all of them against opponents: the ticks are the
 * difference, not the kernel. Where both get out the clock has the last ball received 0.005 to 0.022 s later in the mean, at
 * most 0.033 s in any run: its tick is 0.005 s, and a step waits for the next one a few times.
 * Bounds: 0.03 a pattern at 20 Hz; at 200 Hz one run in two hundred over all, 0.03 s in the mean and 0.05 s in any run.
 */
describe('the event-driven kernel against a clock', { timeout: 120_000 }, () => {
  test.each(PATTERNS)('of twenty ticks a second differs by at most 0.03 in the share got out: %s', (_, document) => {
    const shares = playBoth(document, 600)
    expect(Math.abs(shares.byKernel - shares.byClock)).toBeLessThan(0.03)
    expect(shares.unlike).toBeLessThan(0.03)
    expect(shares.byKernel > 0.05 && shares.byKernel < 0.95).toBe(true)
  })

  test('of two hundred ticks a second ends otherwise in at most one run of two hundred, and when the kernel says', () => {
    const all = PATTERNS.map(([, document]) => playBoth(document, 100, TICK_SECONDS / 10))
    expect(all.reduce((sum, { unlike }) => sum + unlike, 0) / all.length).toBeLessThan(0.005)
    for (const { laterSeconds, apartSeconds } of all) {
      expect(Math.abs(laterSeconds)).toBeLessThan(0.03)
      expect(apartSeconds).toBeLessThan(0.05)
    }
  })

  test('would be seen to differ if their errors were a fifth smaller', () => {
    expect(playBoth(wall, 600, TICK_SECONDS, 0.8).byClock).toBeGreaterThan(playBoth(wall, 600).byKernel + 0.06)
  })
})
