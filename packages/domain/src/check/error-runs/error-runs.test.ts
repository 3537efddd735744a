import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DEMO_PATTERNS } from '../../../../../prisma/demo/patterns'
import { distance } from '../../geometry'
import { type Branch, firstSteps, listBranches, mirrorPattern, type PatternDocument } from '../../pattern'
import { patternArbitrary, spotArbitrary } from '../../pattern/fixtures/arbitrary-pattern'
import { opponentAt, passStep, samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace } from '../../pitch'
import { metres } from '../../quantities'
import { laneMarginBetween } from '../lane'
import { placerFor } from '../places'
import { AGE_PROFILES, profileFor } from '../profiles'
import { timelineOf } from '../timeline'
import { ERROR_PROFILES, scaleErrors } from './error-profile'
import { makeErrorRunner } from './error-runner'
import { addErrorRuns, type ErrorRuns, errorRuns } from './error-runs'
import { INTERCEPTED, LOSS_CAUSES } from './loss-causes'
import { makeMemory, RECEIVED_AT } from './memory'
import { GOT_OUT, playRun } from './play-run'
import { compileProgram } from './program'
import { signTest } from './sign-test'

const space = nominalSpace('us-7v7')
const NONE = scaleErrors(ERROR_PROFILES.U10, 0)

function runsOf(document: PatternDocument, runs = 200, times = 1, seed = 1, from = 0): ErrorRuns {
  const errors = scaleErrors(ERROR_PROFILES[profileFor(document.ageGroup).profileId], times)
  const result = errorRuns(document, nominalSpace(document.formatId), { seed, runs, from, errors })
  if (!result.ok) throw new Error(`${result.refusal.code}: ${result.refusal.detail}`)
  return result.value
}

function outcomes(document: PatternDocument, runs: number): readonly number[] {
  const runner = makeErrorRunner(document, nominalSpace(document.formatId))
  if (!runner.ok) throw new Error(runner.refusal.detail)
  return Array.from({ length: runs }, (_, run) => runner.value.play(1, run))
}

describe('without errors', () => {
  const branches = DEMO_PATTERNS.flatMap((document) => listBranches(document).map((branch: Branch) => branch.document))
  const documents = [samplePattern, ...DEMO_PATTERNS, ...DEMO_PATTERNS.map(mirrorPattern), ...branches]
  const cuts = documents.flatMap((document) => document.steps.map((_, at) => firstSteps(document, at + 1)))

  test('everyone gets out of the demo patterns, their mirrors, cuts and answers, each ball received when the timeline says', () => {
    for (const document of cuts) {
      const pitch = nominalSpace(document.formatId)
      const profile = profileFor(document.ageGroup)
      const program = compileProgram(document, pitch, { profile, errors: NONE, surface: 'normal' })
      const memory = makeMemory(program)
      expect(playRun(program, memory, 1, 0)).toBe(GOT_OUT)
      const received = timelineOf(document, pitch, profile, 'normal').steps.at(-1)!.receivedAt
      // Places are whole millimetres here and times whole milliseconds, step after step.
      expect(Math.abs(memory.now[RECEIVED_AT]! - received)).toBeLessThan(0.005 * document.steps.length)
    }
  })

  /** Passes to feet of standing players, against opponents anywhere: nobody can be late, so only opponents can end it. */
  const standing = patternArbitrary.map((document) => ({
    ...document,
    steps: ['RCB', 'CM', 'LW', 'RW'].map((to, at) => passStep(`s${at + 1}`, ['GK', 'RCB', 'CM', 'LW'][at]!, to)),
  }))

  test('the ball is lost just where the timeline has an opponent first, and nowhere else', () => {
    let lost = 0
    fc.assert(
      fc.property(standing, (document) => {
        const profile = profileFor(document.ageGroup)
        const place = placerFor(document, space)
        const { steps } = timelineOf(document, space, profile, 'normal')
        const margins = steps.map((step) =>
          document.obstacles.map((obstacle) => {
            const opponent = {
              speed: profile.topSpeed.value,
              reaction: profile.reaction.value,
              reach: profile.reach.value,
            }
            if (step.flight.kind !== 'rolls' || distance(step.from, step.to) === 0) return Number.POSITIVE_INFINITY
            return laneMarginBetween(step.from, step.to, step.flight.ball, { at: place(obstacle.spot), ...opponent })
              .margin
          }),
        )
        const isClose = margins.flat().some((margin) => Math.abs(margin) < 0.003)
        const isTooFar = steps.some((step) => step.shortBy > 0)
        if (isClose || isTooFar) return
        const step = margins.findIndex((each) => each.some((margin) => margin < 0))
        const runner = makeErrorRunner(document, space, { errors: NONE })
        if (!runner.ok) throw new Error(runner.refusal.detail)
        expect(runner.value.play(1, 0)).toBe(step < 0 ? GOT_OUT : step * LOSS_CAUSES.length + INTERCEPTED)
        if (step >= 0) lost += 1
      }),
      { numRuns: 300 },
    )
    expect(lost).toBeGreaterThan(20)
  })
})

describe('what any pattern keeps', () => {
  test('slices add up to the whole, wherever they are cut', () => {
    fc.assert(
      fc.property(patternArbitrary, fc.integer({ min: 1, max: 119 }), (document, cut) => {
        const whole = runsOf(document, 120)
        const sum = addErrorRuns(runsOf(document, cut, 1, 1, 0), runsOf(document, 120 - cut, 1, 1, cut))
        expect(sum).toEqual(whole)
      }),
      { numRuns: 60 },
    )
  })

  // Errors to a side are those to the other side in the mirror: a document written for the left turns them round, and
  // mirroring turns that word too. So the same seed gives the same outcome, run by run.
  test('the mirror image gets out in the same runs, and loses the ball at the same steps for the same causes', () => {
    for (const document of DEMO_PATTERNS)
      expect(outcomes(mirrorPattern(document), 500)).toEqual(outcomes(document, 500))
    fc.assert(
      fc.property(patternArbitrary, (document) => {
        expect(outcomes(mirrorPattern(document), 60)).toEqual(outcomes(document, 60))
      }),
      { numRuns: 60 },
    )
  })

  test('one more opponent at rest never saves a run that was lost before', () => {
    let fewer = 0
    fc.assert(
      fc.property(patternArbitrary, spotArbitrary, (document, spot) => {
        const more = { ...document, obstacles: [...document.obstacles, opponentAt('x9', spot)] }
        const before = outcomes(document, 60)
        outcomes(more, 60).forEach((outcome, run) => {
          if (outcome === GOT_OUT) expect(before[run]).toBe(GOT_OUT)
          else if (before[run] === GOT_OUT) fewer += 1
        })
      }),
      { numRuns: 100 },
    )
    expect(fewer).toBeGreaterThan(50)
  })

  test('what is lost and what got out are all the runs, and no number is out of bounds', () => {
    fc.assert(
      fc.property(patternArbitrary, fc.integer({ min: 0, max: 0xffffffff }), (document, seed) => {
        const runs = runsOf(document, 50, 1, seed)
        let left = runs.runs
        for (const step of runs.steps) {
          expect(step.reached).toBe(left)
          left -= LOSS_CAUSES.reduce((sum, cause) => sum + step.lost[cause], 0)
        }
        expect(left).toBe(runs.gotOut)
        expect(runs.share >= 0 && runs.share <= 1 && runs.standardError >= 0 && runs.standardError <= 0.5).toBe(true)
      }),
      { numRuns: 100 },
    )
  })
})

describe('larger errors', () => {
  // The same random numbers on both sides; a sign test that parts them the wrong way by less than one in a thousand fails.
  test.each(DEMO_PATTERNS.map((document) => [document.title, document] as const))(
    'never get out more often: %s',
    (_, document) => {
      const runner = (times: number) => {
        const errors = scaleErrors(ERROR_PROFILES[profileFor(document.ageGroup).profileId], times)
        const made = makeErrorRunner(document, nominalSpace(document.formatId), { errors })
        if (!made.ok) throw new Error(made.refusal.detail)
        return made.value
      }
      const scales = [0, 0.25, 0.5, 1, 1.5, 2, 4]
      const shares = scales.map((times) => {
        const made = runner(times)
        return Array.from({ length: 1000 }, (_unused, run) => made.play(1, run) === GOT_OUT)
      })
      for (let at = 1; at < scales.length; at += 1) {
        const onlyLarger = shares[at]!.filter((out, run) => out && !shares[at - 1]![run]).length
        const onlySmaller = shares[at - 1]!.filter((out, run) => out && !shares[at]![run]).length
        expect(onlyLarger <= onlySmaller || signTest(onlyLarger, onlySmaller) > 0.001).toBe(true)
      }
      const counts = shares.map((outs) => outs.filter(Boolean).length)
      expect(counts[0]).toBe(1000)
      expect(counts.at(-1)).toBeLessThan(counts[3]!)
    },
  )
})

describe('why a ball is lost', () => {
  const causesOf = (document: PatternDocument, step = 0) => runsOf(document, 2000).steps[step]!.lost

  test('beside the touchline it goes out, in the middle it is missed', () => {
    const wide = { ...samplePattern, looks: [], steps: [passStep('s1', 'GK', 'LW')], restart: 'open-play' as const }
    const at = (spot: ReturnType<typeof spotAt>) => ({
      ...wide,
      positions: wide.positions.map((each) => (each.position === 'LW' ? { ...each, spot } : each)),
    })
    expect(causesOf(at(spotAt('build-out-line-left', 0, 0))).out).toBeGreaterThan(
      causesOf(at(spotAt('build-out-line-left', 0, 8))).out,
    )
    expect(causesOf(at(spotAt('build-out-line-left', 0, 8))).missed).toBeGreaterThan(100)
  })

  test('a pass beyond the hardest kick is short every time', () => {
    const far = {
      ...samplePattern,
      looks: [],
      steps: [passStep('s1', 'GK', 'ST')],
      positions: samplePattern.positions.map((each) =>
        each.position === 'ST' ? { ...each, spot: spotAt('far-goal-centre', -2) } : each,
      ),
    }
    const errors = scaleErrors(ERROR_PROFILES.U8, 0)
    const result = errorRuns(far, space, { seed: 1, runs: 10, errors, profile: AGE_PROFILES.U8, surface: 'heavy' })
    expect(result.ok && result.value.steps[0]!.lost.short).toBe(10)
  })

  test('a bad first touch beside an opponent is lost to them, and costs time elsewhere', () => {
    const touch = (obstacles: PatternDocument['obstacles']) => ({
      ...firstSteps(samplePattern, 3),
      looks: [],
      obstacles,
      steps: [passStep('s1', 'GK', 'RCB'), passStep('s2', 'RCB', 'CM')],
    })
    const errors = {
      ...scaleErrors(ERROR_PROFILES.U10, 0),
      touchMetres: { ...ERROR_PROFILES.U10.touchMetres, value: metres(4) },
    }
    const lostTo = (obstacles: PatternDocument['obstacles']) => {
      const result = errorRuns(touch(obstacles), space, { seed: 1, runs: 500, errors })
      if (!result.ok) throw new Error(result.refusal.detail)
      return result.value.steps[0]!.lost
    }
    expect(lostTo([]).touch).toBeLessThan(lostTo([opponentAt('x1', spotAt('build-out-line-right', 8, 0))]).touch)
  })

  test('a shot gets out where it passes between the posts of its target', () => {
    const shot = (widthMm: number): PatternDocument => ({
      ...samplePattern,
      looks: [],
      targets: [{ ...samplePattern.targets[0]!, widthMm: widthMm as PatternDocument['targets'][number]['widthMm'] }],
      steps: [
        passStep('s1', 'GK', 'RCB'),
        { stepId: 's2', action: { kind: 'shot', by: 'RCB', target: 't1' }, runs: [], point: '' },
      ],
    })
    const [narrow, wide] = [runsOf(shot(1000), 2000), runsOf(shot(6000), 2000)]
    expect(narrow.steps[1]!.lost.missed).toBeGreaterThan(wide.steps[1]!.lost.missed)
    expect(narrow.gotOut).toBeGreaterThan(0)
  })

  test('a ball let through keeps its error: with none it comes to the player behind', () => {
    const through: PatternDocument = {
      ...samplePattern,
      looks: [],
      steps: [
        passStep('s1', 'GK', 'CM'),
        { stepId: 's2', action: { kind: 'dummy', by: 'CM', to: 'ST' }, runs: [], point: '' },
      ],
    }
    expect(runsOf(through, 1, 0).gotOut).toBe(1)
    const erred = runsOf(through, 2000)
    expect(erred.gotOut).toBeGreaterThan(0)
    expect(erred.steps[1]!.lost.missed).toBeGreaterThan(erred.steps[0]!.lost.missed)
  })
})

test('says that it is no forecast', () => {
  expect(runsOf(samplePattern, 5).caution).toMatch(/not a forecast/)
})

test('a seed and a range give the same counts every time, and another seed gives others', () => {
  expect(runsOf(samplePattern, 500)).toEqual(runsOf(samplePattern, 500))
  expect(runsOf(samplePattern, 500, 1, 2)).not.toEqual(runsOf(samplePattern, 500))
})
