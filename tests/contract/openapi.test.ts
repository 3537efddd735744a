import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { paths } from '@espalier/contract/paths'
import { problemCodes } from '@espalier/contract/problems'
import { expect, test } from 'vitest'
import { describeApi } from '../../apps/api/src/describe-api'
import { TEST_SETTINGS, testDeps } from '../factories/api'
import { buildLiveApi } from '../isolation/live-routes'

const committed = readFileSync(createRequire(import.meta.url).resolve('@espalier/contract/openapi.json'), 'utf8')
const document = JSON.parse(committed)
const live = await buildLiveApi({ ...testDeps({} as never, { now: 0 }), settings: TEST_SETTINGS })
await live.app.close()

const inDocument = (url: string) => url.replace(/:([A-Za-z]+)/g, '{$1}')

test('the committed contract is the generated one', async () => {
  expect((await describeApi()) === committed).toBe(true)
}, 60_000)

test('every live route is in the contract, and nothing else is', () => {
  const routes = live.routes.map(({ method, url }) => `${method} ${inDocument(url)}`)
  const described = Object.entries<object>(document.paths).flatMap(([url, methods]) =>
    Object.keys(methods).map((method) => `${method.toUpperCase()} ${url}`),
  )
  expect(described.sort()).toEqual(routes.sort())
  expect(document.openapi).toBe('3.1.0')
})

test('every path of the contract has a route', () => {
  const urls = new Set(live.routes.map(({ url }) => url))
  expect(Object.values(paths).filter((path) => !urls.has(path))).toEqual([])
})

test('every answer has a schema, and every problem code is told', () => {
  const bare = Object.entries<Record<string, { responses: object }>>(document.paths).flatMap(([url, methods]) =>
    Object.entries(methods)
      .filter(([, { responses }]) => !('4XX' in responses && '5XX' in responses))
      .map(([method]) => `${method} ${url}`),
  )
  expect(bare).toEqual([])
  expect(document.components.schemas.Problem.properties.code.enum).toEqual(problemCodes)
})
