import loadHighs from 'highs'
import { describe, expect, test } from 'vitest'
import { bestByBruteForce } from './oracle/brute-force'
import { BENCH_CASES, ORACLE_CASES } from './oracle/cases'
import optima from './oracle/optima.json'
import { createDraw, type RequestShape, randomRequest } from './oracle/random-request'
import { minimiseWith, type Optimum, solveByOracle } from './oracle/solve-by-oracle'
import { solveLineups } from './solve-lineups'

/** Another seed recomputes another three. */
const SEED = Number(process.env.LINEUPS_ORACLE_SEED ?? 20261125)

type OracleCase = { readonly shape: RequestShape; readonly optimum: Optimum }

/** Each case is solved once; the tests compare the same answers. */
const answers = new Map<RequestShape, Optimum>()

function solved(shape: RequestShape): Optimum {
  const known = answers.get(shape)
  if (known !== undefined) return known
  const result = solveLineups(randomRequest(shape))
  if (!result.ok) throw new Error(`case ${shape.seed} was refused: ${result.refusal.code}`)
  const { sumOfSquares, sideSumOfSquares } = result.value
  answers.set(shape, { sumOfSquares, sideSumOfSquares })
  return { sumOfSquares, sideSumOfSquares }
}

/** The cases in which a solution differs from the committed optimum, by seed. */
function disagreements(cases: readonly OracleCase[], solve: (shape: RequestShape) => Optimum): number[] {
  return cases.flatMap(({ shape, optimum }) => {
    const found = solve(shape)
    const agrees = found.sumOfSquares === optimum.sumOfSquares && found.sideSumOfSquares === optimum.sideSumOfSquares
    return agrees ? [] : [shape.seed]
  })
}

function drawThree<Item>(items: readonly Item[]): Item[] {
  const draw = createDraw(SEED)
  const left = [...items]
  return [0, 1, 2].map(() => left.splice(draw(left.length), 1)[0]!)
}

describe(`the integer program solved by ${optima.solver}`, () => {
  test('the committed optima are those of the cases as they are now', () => {
    expect(optima.cases.map((it) => it.shape)).toEqual(ORACLE_CASES)
    expect(optima.bench.map((it) => it.shape)).toEqual(BENCH_CASES)
    expect(optima.cases).toHaveLength(60)
  })

  test('line-ups are exactly as fair as the optimum in all sixty cases and at the sizes of the benchmark', () => {
    expect(disagreements([...optima.cases, ...optima.bench], solved)).toEqual([])
  }, 60_000)

  test(`three committed optima, drawn with seed ${SEED}, come out of the integer program again`, async () => {
    const minimise = minimiseWith(await loadHighs())
    const three = drawThree<OracleCase>(optima.cases)
    expect(disagreements(three, (shape) => solveByOracle(randomRequest(shape), minimise))).toEqual([])
  }, 60_000)

  test('one altered optimum is noticed, in either sum and either direction', () => {
    const target = drawThree<OracleCase>(optima.cases)[0]!
    for (const by of [-1, 1]) {
      for (const key of ['sumOfSquares', 'sideSumOfSquares'] as const) {
        const altered = optima.cases.map((it) =>
          it.shape.seed === target.shape.seed ? { ...it, optimum: { ...it.optimum, [key]: it.optimum[key] + by } } : it,
        )
        expect(disagreements(altered, solved)).toEqual([target.shape.seed])
      }
    }
  }, 60_000)
})

describe('looking at every plan of tiny requests', () => {
  const sizes = [
    { children: 4, positions: 3, blocks: 4, choices: 3 },
    { children: 5, positions: 4, blocks: 5, choices: 2 },
    { children: 6, positions: 5, blocks: 4, choices: 2 },
    { children: 6, positions: 5, blocks: 4, choices: 2 },
  ]
  const cases = Array.from({ length: 60 }, (_, index) => {
    const withGoalkeeper = index % 5 === 0
    const request = randomRequest({ seed: 1 + index, ...sizes[index % 4]!, withGoalkeeper, pastMost: 3 + (index % 2) })
    return { seed: 1 + index, request, best: bestByBruteForce(request) }
  })

  test.each(cases)('no plan of case $seed has fewer changes of position among the fairest', ({ request, best }) => {
    const result = solveLineups(request)
    if (!result.ok) throw new Error(result.refusal.code)
    const { sumOfSquares, sideSumOfSquares, changes, changesProven } = result.value
    expect({ sumOfSquares, sideSumOfSquares, changes }).toEqual(best)
    expect(changesProven).toBe(true)
  })

  test('some of these requests do need a change of position, so that the comparison can fail', () => {
    expect(cases.filter((it) => it.best !== null && it.best.changes > 0).length).toBeGreaterThanOrEqual(8)
  })
})
