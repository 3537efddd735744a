// Solves the line-up cases by HiGHS and writes their optima beside the tests that compare with them. Minutes, by hand only:
//   node --import tsx tests/oracles/lineups.ts
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import loadHighs from 'highs'
import { BENCH_CASES, ORACLE_CASES } from '../../packages/domain/src/lineups/oracle/cases'
import { type RequestShape, randomRequest } from '../../packages/domain/src/lineups/oracle/random-request'
import { minimiseWith, solveByOracle } from '../../packages/domain/src/lineups/oracle/solve-by-oracle'

const OUTPUT = fileURLToPath(new URL('../../packages/domain/src/lineups/oracle/optima.json', import.meta.url))
const HIGHS = new URL('../../node_modules/highs/package.json', import.meta.url)

const minimise = minimiseWith(await loadHighs())
const solve = (shape: RequestShape) => {
  const optimum = solveByOracle(randomRequest(shape), minimise)
  process.stdout.write(`${JSON.stringify({ ...shape, ...optimum })}\n`)
  return { shape, optimum }
}
const optima = {
  solver: `highs ${JSON.parse(readFileSync(HIGHS, 'utf8')).version}`,
  command: 'node --import tsx tests/oracles/lineups.ts',
  cases: ORACLE_CASES.map(solve),
  bench: BENCH_CASES.map(solve),
}
writeFileSync(OUTPUT, `${JSON.stringify(optima, null, 2)}\n`)
