import { fileURLToPath } from 'node:url'
import { expect, type Page, test } from '@playwright/test'
import { build } from 'esbuild'
import fc from 'fast-check'
import { evenings } from '../../packages/domain/src/session/evening.arbitrary.fixture'
import { type EveningFacts, planEvening } from '../../packages/domain/src/session/index'

// A plan is computed on the phone and read on the server, on paper and on another phone: the same facts must give the same
// bytes everywhere. Random evenings from one seed, planned by Node and by the browser.

const EVENINGS = 300
const SEED = 20_261_125
const session = fileURLToPath(new URL('../../packages/domain/src/session/index.ts', import.meta.url))

async function givePlanner(page: Page): Promise<void> {
  const built = await build({
    stdin: { contents: `export { planEvening } from ${JSON.stringify(session)}`, resolveDir: process.cwd() },
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'planner',
  })
  await page.goto('about:blank')
  await page.addScriptTag({ content: built.outputFiles[0]?.text ?? '' })
}

function planInPage(page: Page, facts: readonly EveningFacts[]): Promise<readonly string[]> {
  return page.evaluate((all) => {
    const { planner } = globalThis as unknown as { planner: { planEvening: (facts: unknown) => unknown } }
    return all.map((one) => JSON.stringify(planner.planEvening(one)))
  }, facts)
}

test('three hundred evenings are planned to the same bytes in Node and in the browser', async ({ page }) => {
  await givePlanner(page)
  const facts = fc.sample(evenings(), { seed: SEED, numRuns: EVENINGS })
  const here = facts.map((one) => JSON.stringify(planEvening(one)))
  const there = await planInPage(page, facts)
  // Equal one by one: a difference names its evening instead of printing three hundred plans.
  const different = here.flatMap((plan, index) => (plan === there[index] ? [] : [index]))
  expect(different).toEqual([])
  expect(there).toHaveLength(EVENINGS)
})

test('a pace one centimetre longer on one side alone is noticed', async ({ page }) => {
  await givePlanner(page)
  const [facts] = fc.sample(evenings(), { seed: SEED, numRuns: 1 })
  if (facts === undefined) throw new Error('one evening was asked for')
  const longer = { ...facts, paceMm: facts.paceMm + 10 } as EveningFacts
  expect(await planInPage(page, [longer])).not.toEqual([JSON.stringify(planEvening(facts))])
})
