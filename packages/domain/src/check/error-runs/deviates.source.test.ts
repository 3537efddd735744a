import { describe, expect, test } from 'vitest'
import { bitsFor, cosineOf, firstWord, normalFromBits, secondWord, sineOf } from './deviates'
import { standardErrorOf } from './error-runs'

/** The 32 bits whose share, (bits + ½)/2³², is nearest to a probability. */
function bitsAt(probability: number): number {
  return Math.round(probability * 2 ** 32 - 0.5)
}

// Source: standard normal quantiles as tables print them to six decimals (NIST/SEMATECH e-Handbook of Statistical Methods,
// 1.3.6.7.1, has the same to three). The bits are a whole step of 2⁻³² away from the probability, at most 1e-7 of a quantile.
test.each([
  [0.9, 1.281552],
  [0.95, 1.644854],
  [0.975, 1.959964],
  [0.99, 2.326348],
  [0.995, 2.575829],
  [0.999, 3.090232],
])('the normal quantile of %s is %s', (probability, quantile) => {
  expect(Math.abs(normalFromBits(bitsAt(probability)) - quantile)).toBeLessThan(6e-7)
  expect(Math.abs(normalFromBits(bitsAt(1 - probability)) + quantile)).toBeLessThan(6e-7)
})

// Source: Wichura 1988, Applied Statistics 37(3), 477–484, the two check values within 32 bits (from memory).
test.each([
  [0.25, -0.6744897501960817],
  [0.001, -3.090232306167814],
])('algorithm AS 241 at %s gives %s, to the step between bits', (probability, quantile) => {
  expect(Math.abs(normalFromBits(bitsAt(probability)) - quantile)).toBeLessThan(1e-7)
})

// Source: elementary: Φ(x) = ½ + φ(x)(x + x³/3 + x⁵/15 + …), Abramowitz & Stegun 26.2.11, summed here; no quantile formula.
test('the quantile undoes the normal distribution over its whole range', () => {
  const below = (x: number) => {
    let term = x
    let sum = x
    for (let odd = 3; odd < 400; odd += 2) {
      term *= (x * x) / odd
      sum += term
    }
    return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI)
  }
  for (let place = 1; place < 4000; place += 1) {
    const bits = Math.imul(place, 1_073_741) >>> 0
    expect(Math.abs(below(normalFromBits(bits)) - (bits + 0.5) / 2 ** 32)).toBeLessThan(1e-12)
  }
})

describe('errors in direction', () => {
  // Source: published check values of this project, ANG-01: miss = d·tan(e); 10 m, 4°: 0.699268 m (relative 0.0005).
  test('10 m and 4 degrees miss by 0.699268 m', () => {
    const sine = sineOf((4 * Math.PI) / 180)
    expect((10 * sine) / cosineOf(sine)).toBeCloseTo(0.699268, 6)
  })

  // Source: ANG-04: 2Φ(atan(w/d)/sd) − 1; 15 m, ±1.5 m, 4°: 0.846607. Four standard errors of 200,000 draws.
  test('of passes over 15 m with 4 degrees 0.846607 end within 1.5 m of the line', () => {
    const draws = 200_000
    const spread = (4 * Math.PI) / 180
    let inside = 0
    for (let run = 0; run < draws; run += 1) {
      const sine = sineOf(spread * normalFromBits(bitsFor(firstWord(2026, run), secondWord(2026, run), 0, 0)))
      if (Math.abs((15 * sine) / cosineOf(sine)) <= 1.5) inside += 1
    }
    expect(Math.abs(inside / draws - 0.846607)).toBeLessThan(4 * standardErrorOf(0.846607, draws))
  })
})

// Source: the binomial distribution: √(p(1 − p)/n); half of a hundred ± 0.05, a fifth of 400 ± 0.02.
test.each([
  [0.5, 100, 0.05],
  [0.2, 400, 0.02],
  [0, 50, 0],
])('the standard error of %s of %s runs is %s', (share, runs, error) => {
  expect(standardErrorOf(share, runs)).toBeCloseTo(error, 12)
})
