// Line-ups of a whole evening, and re-planning after one tap, at the sizes whose optima the oracle has solved. A time counts only
// when the plan is as fair as the oracle's optimum. There is no floor to compare with; the growth against size is a figure itself.
import { readFileSync } from 'node:fs'
import { type LineupPlan, resolveLineups, solveLineups } from '../../packages/domain/src/lineups/index'
import { BENCH_CASES } from '../../packages/domain/src/lineups/oracle/cases'
import { type RequestShape, randomRequest } from '../../packages/domain/src/lineups/oracle/random-request'
import type { Optimum } from '../../packages/domain/src/lineups/oracle/solve-by-oracle'

const RUNS = 15
const OPTIMA = new URL('../../packages/domain/src/lineups/oracle/optima.json', import.meta.url)

type Optima = { readonly solver: string; readonly bench: readonly { shape: RequestShape; optimum: Optimum }[] }
const optima: Optima = JSON.parse(readFileSync(OPTIMA, 'utf8'))

function print(figure: string, value: number, unit: string, goal: string): void {
  const rounded = Math.round(value * 100) / 100
  process.stdout.write(`${JSON.stringify({ figure, value: rounded, unit, floor: null, ratio: null, goal })}\n`)
}

/** Median of several runs, after three that warm up. */
function medianMilliseconds(work: (run: number) => void): number {
  const times: number[] = []
  for (let run = -3; run < RUNS; run++) {
    const from = performance.now()
    work(Math.max(0, run))
    if (run >= 0) times.push(performance.now() - from)
  }
  return times.sort((a, b) => a - b)[Math.floor(RUNS / 2)] ?? Number.NaN
}

function assertOptimal(shape: RequestShape, plan: LineupPlan): void {
  const known = optima.bench.find((it) => JSON.stringify(it.shape) === JSON.stringify(shape))
  if (known === undefined) throw new Error(`the oracle has not solved ${JSON.stringify(shape)}`)
  const { sumOfSquares, sideSumOfSquares } = known.optimum
  if (plan.sumOfSquares !== sumOfSquares || plan.sideSumOfSquares !== sideSumOfSquares) {
    throw new Error('the plan is not as fair as the optimum of the oracle')
  }
}

const resolving: number[] = []
for (const shape of BENCH_CASES) {
  const size = `${shape.children}x${shape.positions}x${shape.blocks}`
  const request = randomRequest(shape)
  const result = solveLineups(request)
  if (!result.ok) throw new Error(result.refusal.code)
  const plan = result.value
  assertOptimal(shape, plan)
  const solve = medianMilliseconds(() => solveLineups(request))
  const proof = plan.changesProven ? 'proven fewest' : 'best found'
  const goal = `optimum = oracle (${optima.solver}): yes; ${plan.changes} changes of position, ${proof}`
  print(`lineups.${size}`, solve, 'ms', goal)
  const evening = { request, plan, playedBlocks: 1, unavailable: [] }
  const onField = plan.blocks[1]?.places.filter((it) => it.position !== request.goalkeeperPosition) ?? []
  const resolve = medianMilliseconds((run) => {
    resolveLineups(evening, { kind: 'sits-out', childId: onField[run % onField.length]?.childId ?? '' })
  })
  resolving.push(resolve)
  print(`lineups.resolve.${size}`, resolve, 'ms', '< 100 ms')
}
// The time of a whole evening depends on how soon a plan without changes turns up; re-planning is steady, so its growth is shown.
const [small = Number.NaN, large = Number.NaN] = resolving
const [fewPlaces = Number.NaN, manyPlaces = Number.NaN] = BENCH_CASES.map((it) => it.positions * it.blocks)
print('lineups.resolve.growth', large / small, 'times', `for ${(manyPlaces / fewPlaces).toFixed(1)} times the places`)
