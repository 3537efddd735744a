import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bitsFor, cosineOf, firstWord, mixBits, normalFromBits, secondWord, sineOf } from './deviates'

const wholeArbitrary = fc.integer({ min: 0, max: 0xffffffff })

function deviate(seed: number, run: number, step: number, quantity: number): number {
  return normalFromBits(bitsFor(firstWord(seed, run), secondWord(seed, run), step, quantity))
}

function correlation(pairs: readonly (readonly [number, number])[]): number {
  const sum = (value: (pair: readonly [number, number]) => number) => pairs.reduce((all, pair) => all + value(pair), 0)
  const count = pairs.length
  const [x, y] = [sum(([one]) => one) / count, sum(([, other]) => other) / count]
  const both = sum(([one, other]) => (one - x) * (other - y))
  return both / Math.sqrt(sum(([one]) => (one - x) ** 2) * sum(([, other]) => (other - y) ** 2))
}

describe('the random numbers', () => {
  test('are finite, within five standard deviations of 2⁻³², and odd about the middle', () => {
    fc.assert(
      fc.property(wholeArbitrary, (bits) => {
        const value = normalFromBits(bits)
        expect(Math.abs(value)).toBeLessThan(6.5)
        expect(normalFromBits(0xffffffff - bits)).toBe(-value)
      }),
    )
    expect(normalFromBits(0)).toBeCloseTo(-6.3379, 2)
  })

  test('grow with their bits, over the seams of the formula too', () => {
    const seams = [0, 1, 2, 3, 0.075 * 2 ** 32, 2 ** 31 - 1, 2 ** 31, 0.925 * 2 ** 32].map(Math.floor)
    for (const seam of seams) {
      for (let bits = Math.max(0, seam - 40); bits < seam + 40; bits += 1) {
        expect(normalFromBits(bits + 1)).toBeGreaterThan(normalFromBits(bits))
      }
    }
  })

  // Five standard errors of the first four moments of 100,000 draws: a right generator fails once in a million.
  test('have the moments of the standard normal', () => {
    const draws = 100_000
    const moments = [0, 0, 0, 0]
    for (let run = 0; run < draws; run += 1) {
      const value = deviate(11, run, run % 10, run % 7)
      for (let power = 1; power <= 4; power += 1) moments[power - 1]! += value ** power / draws
    }
    const errors = [1, 2, 15, 96].map((variance) => 5 * Math.sqrt(variance / draws))
    const expected = [0, 1, 0, 3]
    moments.forEach((moment, at) => {
      expect(Math.abs(moment - expected[at]!)).toBeLessThan(errors[at]!)
    })
  })

  test('do not go together between neighbouring runs, steps, quantities or seeds', () => {
    const draws = 20_000
    const neighbours = [
      (run: number) => [deviate(5, run, 0, 0), deviate(5, run + 1, 0, 0)] as const,
      (run: number) => [deviate(5, run, 0, 0), deviate(5, run, 1, 0)] as const,
      (run: number) => [deviate(5, run, 0, 0), deviate(5, run, 0, 1)] as const,
      (run: number) => [deviate(5, run, 0, 0), deviate(6, run, 0, 0)] as const,
    ]
    for (const neighbour of neighbours) {
      const pairs = Array.from({ length: draws }, (_, run) => neighbour(run))
      expect(Math.abs(correlation(pairs))).toBeLessThan(5 / Math.sqrt(draws))
    }
  })

  test('fill 256 boxes evenly by their upper and by their lower bits', () => {
    for (const shift of [0, 24]) {
      const boxes = new Float64Array(256)
      const draws = 256 * 400
      for (let run = 0; run < draws; run += 1) {
        boxes[(bitsFor(firstWord(3, run), secondWord(3, run), 4, 2) >>> shift) & 255]! += 1
      }
      const chi = boxes.reduce((sum, count) => sum + (count - 400) ** 2 / 400, 0)
      // Chi-squared with 255 degrees of freedom: mean 255, standard deviation 22.6; five of them to either side.
      expect(Math.abs(chi - 255)).toBeLessThan(5 * 22.6)
    }
  })

  test('a change of one bit of the seed changes about half of the bits', () => {
    fc.assert(
      fc.property(wholeArbitrary, fc.integer({ min: 0, max: 31 }), (value, bit) => {
        let changed = 0
        for (let other = 0; other < 64; other += 1) {
          let differs = mixBits(value + other) ^ mixBits((value + other) ^ (1 << bit))
          for (; differs !== 0; differs &= differs - 1) changed += 1
        }
        expect(Math.abs(changed / 64 - 16)).toBeLessThan(5)
      }),
    )
  })

  test('are others for every step and quantity of a run', () => {
    const bits = new Set<number>()
    for (let step = 0; step < 200; step += 1) {
      for (let quantity = 0; quantity < 32; quantity += 1)
        bits.add(bitsFor(firstWord(1, 2), secondWord(1, 2), step, quantity))
    }
    expect(bits.size).toBe(200 * 32)
  })

  test('two runs of a seed never start from the same word', () => {
    const words = new Set(Array.from({ length: 100_000 }, (_, run) => firstWord(9, run)))
    expect(words.size).toBe(100_000)
  })
})

test('sine and cosine agree with the library to 1e-12, and stop at a quarter turn', () => {
  for (let angle = -1.57; angle <= 1.57; angle += 0.01) {
    expect(Math.abs(sineOf(angle) - Math.sin(angle))).toBeLessThan(1e-12)
    expect(Math.abs(cosineOf(sineOf(angle)) - Math.cos(angle))).toBeLessThan(1e-9)
    expect(sineOf(-angle)).toBe(-sineOf(angle))
  }
  expect(sineOf(40)).toBeCloseTo(1, 12)
})
