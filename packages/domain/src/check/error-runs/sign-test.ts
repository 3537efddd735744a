import { assert } from '../../quantities'

/**
 * Two-sided exact test that of pairs that differ as many go one way as the other: McNemar 1947, "Note on the sampling error
 * of the difference between correlated proportions or percentages", Psychometrika 12, 153–157, with the binomial itself
 * (n, ½) in the place of its large-sample form. Twice the smaller tail, at most 1; without differing pairs 1.
 * Summed with + × ÷ alone, so that every engine comes to the same verdict.
 */
export function signTest(one: number, other: number): number {
  assert(
    Number.isSafeInteger(one) && Number.isSafeInteger(other) && one >= 0 && other >= 0,
    'pairs are counted in whole numbers',
  )
  const pairs = one + other
  const fewer = Math.min(one, other)
  if (pairs === 0 || one === other) return 1
  // The chance of exactly `fewer`, from that of the middle downwards: no power of two that vanishes, no factorial.
  let chance = middleChance(pairs)
  for (let count = Math.floor(pairs / 2); count > fewer; count -= 1) chance *= count / (pairs - count + 1)
  // The rest of the tail in terms of that one; each is smaller than the one before it.
  let tail = 1
  let term = 1
  for (let count = fewer; count > 0 && term > 1e-18; count -= 1) {
    term *= count / (pairs - count + 1)
    tail += term
  }
  return Math.min(1, 2 * chance * tail)
}

/** The chance of ⌊n/2⌋ of n at one half. */
function middleChance(pairs: number): number {
  let chance = 1
  for (let half = 1; half <= Math.floor(pairs / 2); half += 1) chance *= (2 * half - 1) / (2 * half)
  return pairs % 2 === 0 ? chance : (chance * pairs) / (pairs + 1)
}
