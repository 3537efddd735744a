import { describe, expect, test } from 'vitest'
import { signTest } from './sign-test'

// Source: the binomial (n, ½) in closed form, two-sided as twice the smaller tail: 0 of n: 2·2⁻ⁿ; 1 of n: 2(n + 1)·2⁻ⁿ;
// 2 of n: 2(1 + n + n(n − 1)/2)·2⁻ⁿ. Exact to rounding.
describe('the exact test of McNemar 1947 (Psychometrika 12, 153–157) with binomial tails', () => {
  test.each([
    [0, 5, 2 / 2 ** 5],
    [0, 10, 2 / 2 ** 10],
    [1, 9, 22 / 2 ** 10],
    [9, 1, 22 / 2 ** 10],
    [1, 11, 26 / 2 ** 12],
    [2, 10, (2 * (1 + 12 + 66)) / 2 ** 12],
    [0, 60, 2 / 2 ** 60],
  ])('%s against %s pairs: %s', (one, other, chance) => {
    expect(signTest(one, other) / chance).toBeCloseTo(1, 12)
  })

  // Source: printed tables of cumulative binomial probabilities, n = 10, p = 0.5: 0.0010, 0.0107, 0.0547, 0.1719, 0.3770.
  test.each([
    [0, 0.001],
    [1, 0.0107],
    [2, 0.0547],
    [3, 0.1719],
    [4, 0.377],
  ])('ten pairs, %s of them one way: twice the tabled %s', (one, tail) => {
    expect(Math.abs(signTest(one, 10 - one) / 2 - tail)).toBeLessThan(0.00005)
  })

  // Source: Agresti, Categorical Data Analysis, approval of a leader in two surveys: 86 changed one way, 150 the other,
  // z² = (150 − 86)²/236 = 17.36 (from memory); the tail of χ² with one degree of freedom there is 3.1e-5.
  test('86 against 150 is as unlikely as its large-sample statistic of 17.36 says', () => {
    expect(signTest(86, 150)).toBeGreaterThan(3.1e-5)
    expect(signTest(86, 150)).toBeLessThan(4.5e-5)
  })

  test('no pairs that differ, or as many each way, are no difference', () => {
    expect(signTest(0, 0)).toBe(1)
    expect(signTest(7, 7)).toBe(1)
  })

  // Source: normal approximation with continuity, two-sided tail of (|b − c| − 1)/√n = 2.575829 is 0.01.
  test('half a million pairs are summed without losing the tail', () => {
    const pairs = 500_000
    const apart = Math.round(2.575829 * Math.sqrt(pairs)) + 1
    const fewer = (pairs - apart) / 2
    const chance = signTest(Math.floor(fewer), pairs - Math.floor(fewer))
    expect(Math.abs(chance - 0.01)).toBeLessThan(0.0001)
    expect(signTest(0, 1_000_000)).toBe(0)
  })
})
