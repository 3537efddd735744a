import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { PatternDocument } from '../../pattern'
import { patternArbitrary } from '../../pattern/fixtures/arbitrary-pattern'
import { passStep, samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace, type Space } from '../../pitch'
import type { Millimetres } from '../../quantities'
import { AGE_PROFILES, type AgeProfile } from '../profiles'
import { SURFACES } from '../surfaces'
import { ERROR_PROFILES, type ErrorProfile } from './error-profile'
import { type ErrorRunsRefusal, makeErrorRunner, RUNS_MAX } from './error-runner'
import { type ErrorRuns, errorRuns, playRuns } from './error-runs'

const space = nominalSpace('us-7v7')
const plain: PatternDocument = { ...samplePattern, looks: [] }

function codeOf(document: PatternDocument, options: Partial<Parameters<typeof errorRuns>[2]> = {}, on: Space = space) {
  const result = errorRuns(document, on, { seed: 1, runs: 10, ...options })
  return result.ok ? 'ran' : (result.refusal.code satisfies ErrorRunsRefusal['code'])
}

function numbersOf(runs: ErrorRuns): readonly number[] {
  const steps = runs.steps.flatMap((step) => [step.reached, ...Object.values(step.lost)])
  return [runs.runs, runs.gotOut, runs.share, runs.standardError, ...steps]
}

const oddNumber = fc.oneof(
  fc.constantFrom(
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    -1,
    0,
    -0,
    1e308,
    1e-308,
    0.5,
    2 ** 53,
  ),
  fc.double(),
)

describe('hostile input', () => {
  test.each([0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY, RUNS_MAX + 1])('%s runs are refused', (runs) => {
    expect(codeOf(plain, { runs })).toBe('runs-out-of-range')
  })

  test('a range that ends beyond a million is refused, the last run of the million is not', () => {
    expect(codeOf(plain, { from: RUNS_MAX, runs: 1 })).toBe('runs-out-of-range')
    expect(codeOf(plain, { from: -1, runs: 1 })).toBe('runs-out-of-range')
    expect(codeOf(plain, { from: RUNS_MAX - 1, runs: 1 })).toBe('ran')
  })

  test.each([-1, 0.5, 2 ** 32, Number.NaN])('a seed of %s is refused', (seed) => {
    expect(codeOf(plain, { seed })).toBe('seed-out-of-range')
  })

  const relay = (count: number): PatternDocument => {
    const steps = Array.from({ length: count }, (_, at) =>
      at % 2 === 0 ? passStep(`s${at}`, 'GK', 'RCB') : passStep(`s${at}`, 'RCB', 'GK'),
    )
    return { ...plain, steps }
  }

  test('no steps and more than 200 are refused, 200 are run; a million runs of them are too much at once', () => {
    expect(codeOf(relay(0))).toBe('nothing-to-run')
    expect(codeOf(relay(201))).toBe('too-many-steps')
    expect(codeOf(relay(200))).toBe('ran')
    expect(codeOf(relay(200), { runs: RUNS_MAX })).toBe('too-much-work')
  })

  test('a document with a fault is refused with where it is', () => {
    const result = errorRuns({ ...plain, steps: [passStep('s1', 'GK', 'NOBODY')] }, space, { seed: 1, runs: 1 })
    expect(result).toMatchObject({ ok: false, refusal: { code: 'document-has-faults' } })
    expect(!result.ok && result.refusal.detail).toContain('/steps/0/action/to')
  })

  test('places and sizes that are no whole millimetres are refused', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 0.5, 1e12]) {
      const spot = { ...spotAt('centre-mark'), upMm: value as Millimetres }
      const moved = { ...plain, positions: plain.positions.map((each) => ({ ...each, spot })) }
      expect(codeOf(moved)).toBe('place-not-measured')
      expect(codeOf(plain, {}, { ...space, lengthMm: value as Millimetres })).toBe('place-not-measured')
    }
    expect(codeOf(plain, {}, { ...space, widthMm: 0 as Millimetres })).toBe('place-not-measured')
  })

  test('everyone in one place, passes without length: the ball arrives at once, and every number is one', () => {
    const heap = {
      ...plain,
      positions: plain.positions.map((each) => ({ ...each, spot: spotAt('centre-mark') })),
      steps: [passStep('s1', 'GK', 'RCB'), passStep('s2', 'RCB', 'CM'), passStep('s3', 'CM', 'GK')],
    }
    const result = errorRuns(heap, space, { seed: 1, runs: 300 })
    expect(result.ok && result.value.gotOut).toBe(300)
    expect(result.ok && numbersOf(result.value).every(Number.isFinite)).toBe(true)
  })

  test('any value in the place of any of a profile or of the errors is refused or played, with finite counts', () => {
    const errorKeys = Object.keys(ERROR_PROFILES.U10).filter((key) => key !== 'profileId')
    const profileKeys = Object.keys(AGE_PROFILES.U10).filter((key) => key !== 'profileId')
    let ran = 0
    let refused = 0
    fc.assert(
      fc.property(
        patternArbitrary,
        fc.constantFrom(...errorKeys, ...profileKeys.map((key) => `profile.${key}`)),
        oddNumber,
        fc.constantFrom(...SURFACES),
        (document, key, value, surface) => {
          const name = key.replace('profile.', '')
          const swap = <Whole>(whole: Whole) => ({ ...whole, [name]: { value, kind: 'club', source: 'test' } }) as Whole
          const profile: AgeProfile = key === name ? AGE_PROFILES.U10 : swap(AGE_PROFILES.U10)
          const errors: ErrorProfile = key === name ? swap(ERROR_PROFILES.U10) : ERROR_PROFILES.U10
          const result = errorRuns(document, space, { seed: 1, runs: 20, profile, errors, surface })
          if (result.ok) ran += 1
          else refused += 1
          if (result.ok) expect(numbersOf(result.value).every(Number.isFinite)).toBe(true)
          else expect(result.refusal.code).toBe('setting-not-usable')
        },
      ),
      { numRuns: 500 },
    )
    expect(Math.min(ran, refused)).toBeGreaterThan(20)
  })

  test('a longest pass that is none is refused, one a club has edited tells the direction', () => {
    const withReach = (value: number): AgeProfile => ({
      ...AGE_PROFILES.U10,
      passLengthMax: { value: value as AgeProfile['passLengthMax']['value'], kind: 'club', source: 'measured' },
    })
    expect(codeOf(plain, { profile: withReach(Number.NaN) })).toBe('setting-not-usable')
    const got = (reach: number) => {
      const result = errorRuns(plain, space, { seed: 1, runs: 500, profile: withReach(reach) })
      return result.ok ? result.value.gotOut : Number.NaN
    }
    expect(got(18)).toBeGreaterThan(got(12) + 50)
  })

  test('nothing is kept from one run to the next: runs in any order come out the same', () => {
    fc.assert(
      fc.property(
        patternArbitrary,
        fc.array(fc.nat({ max: 999 }), { minLength: 1, maxLength: 30 }),
        (document, order) => {
          const [one, other] = [makeErrorRunner(document, space), makeErrorRunner(document, space)]
          if (!one.ok || !other.ok) throw new Error('an arbitrary pattern can be run')
          const forth = order.map((run) => one.value.play(3, run))
          const back = [...order].reverse().map((run) => other.value.play(3, run))
          expect(back.reverse()).toEqual(forth)
        },
      ),
      { numRuns: 60 },
    )
  })

  test('a surface nobody knows is refused', () => {
    expect(codeOf(plain, { surface: 'ice' as (typeof SURFACES)[number] })).toBe('setting-not-usable')
  })

  test('a made-ready document refuses the same ranges', () => {
    const runner = makeErrorRunner(plain, space)
    expect(runner.ok && playRuns(runner.value, { seed: 1, runs: 0 })).toMatchObject({ ok: false })
  })
})
