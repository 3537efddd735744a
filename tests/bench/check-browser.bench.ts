// check.parity and check.drag, in Chromium. Parity: the notes and the timeline of random valid patterns are the same bytes there
// and in Node. Drag: complete checks a second, each of a new document with a player moved, while the processor is slowed four
// times by the browser itself.
import { fileURLToPath } from 'node:url'
import { chromium, type Page } from '@playwright/test'
import { build } from 'esbuild'
import fc from 'fast-check'
import { lookedPatternArbitrary } from '../../packages/domain/src/check/cover/fixtures/arbitrary-looks'
import { hostileCase } from '../../packages/domain/src/check/fixtures/hostile-case'
import { EVERYTHING, widePatternArbitrary } from '../../packages/domain/src/check/fixtures/wide-pattern'
import { type CheckOptions, checkPattern } from '../../packages/domain/src/check/index'
import { checkShape, type PatternDocument } from '../../packages/domain/src/pattern/index'
import { nominalSpace, type Space } from '../../packages/domain/src/pitch/index'
import { browserArguments, findBrowserProgram } from '../browser/browser-program'
import { patternDragged } from './check-pattern-played'

const DOCUMENTS = 300
const SEED = 20_261_125
const SLOWED = 4
const DRAG_SECONDS = 3
const DRAG_ROUNDS = 5
const DRAG_GOAL = 30

type Case = { readonly document: PatternDocument; readonly space: Space; readonly options: CheckOptions }

/** A third each: every action and restart with every rule on, looks with their answers, and whatever a contract lets through. */
function drawCases(): readonly Case[] {
  const third = DOCUMENTS / 3
  const onPitch = (document: PatternDocument, options: CheckOptions): Case => ({
    document,
    space: nominalSpace(document.formatId),
    options,
  })
  const wide = fc.sample(widePatternArbitrary, { seed: SEED, numRuns: third })
  const looked = fc.sample(lookedPatternArbitrary(), { seed: SEED, numRuns: third })
  const valid = hostileCase.filter((each) => checkShape(each.document).length === 0)
  const hostile = fc.sample(valid, { seed: SEED, numRuns: third })
  return [
    ...wide.map((document) => onPitch(document, EVERYTHING)),
    ...looked.map((document) => onPitch(document, {})),
    ...hostile.map(
      ({ document, space, surface }): Case => ({
        document,
        space: space ?? nominalSpace(document.formatId),
        options: { surface },
      }),
    ),
  ]
}

type Checker = { readonly check: (document: unknown, space: unknown, options: unknown) => { notes: unknown[] } }

async function giveCheck(page: Page): Promise<void> {
  const path = (folder: string) =>
    fileURLToPath(new URL(`../../packages/domain/src/${folder}/index.ts`, import.meta.url))
  const built = await build({
    stdin: {
      contents: `export { checkPattern as check } from ${JSON.stringify(path('check'))}`,
      resolveDir: import.meta.dirname,
    },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    globalName: 'checker',
  })
  await page.goto('about:blank')
  await page.addScriptTag({ content: built.outputFiles[0]?.text ?? '' })
}

async function countSame(page: Page, cases: readonly Case[]): Promise<number> {
  const here = cases.map(({ document, space, options }) => JSON.stringify(checkPattern(document, space, options)))
  const there = await page.evaluate(
    (all) => {
      const { checker } = globalThis as unknown as { checker: Checker }
      return all.map(({ document, space, options }) => JSON.stringify(checker.check(document, space, options)))
    },
    cases as readonly { document: unknown; space: unknown; options: unknown }[],
  )
  return here.filter((one, index) => one === there[index]).length
}

/** Checks a second: how many whole checks fit into a few seconds of the page's main thread. */
async function checksPerSecond(page: Page): Promise<number> {
  const moves = Array.from({ length: 200 }, (_, move) => patternDragged(move))
  const input = { moves, space: nominalSpace(moves[0]!.formatId), seconds: DRAG_SECONDS }
  return page.evaluate(
    ({ moves, space, seconds }) => {
      const { checker } = globalThis as unknown as { checker: Checker }
      let checks = 0
      let notes = 0
      const from = performance.now()
      while (performance.now() - from < seconds * 1000) {
        notes += checker.check(moves[checks % moves.length], space, {}).notes.length
        checks += 1
      }
      if (notes === 0) throw new Error('the checks said nothing: they did not run')
      return (checks * 1000) / (performance.now() - from)
    },
    input as { moves: unknown[]; space: unknown; seconds: number },
  )
}

function print(figure: string, value: number, unit: string, goal: number, more: object): void {
  process.stdout.write(`${JSON.stringify({ figure, value, unit, floor: null, ratio: null, goal, ...more })}\n`)
}

const browser = await chromium.launch({ executablePath: await findBrowserProgram(), args: [...browserArguments] })
try {
  const page = await browser.newPage()
  await giveCheck(page)
  const cases = drawCases()
  const control = await page.evaluate(
    ({ document, space }) => {
      const { checker } = globalThis as unknown as { checker: Checker }
      return JSON.stringify(checker.check(document, space, { surface: 'heavy' }))
    },
    { document: cases[0]!.document as unknown, space: cases[0]!.space as unknown },
  )
  const { document, space } = cases[0]!
  if (control === JSON.stringify(checkPattern(document, space)))
    throw new Error('a heavy pitch on one side is not noticed')
  print('check.parity', await countSame(page, cases), 'documents', DOCUMENTS, { of: cases.length })

  const session = await page.context().newCDPSession(page)
  const full = await checksPerSecond(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED })
  const rates: number[] = []
  for (let round = 0; round < DRAG_ROUNDS; round += 1) rates.push(await checksPerSecond(page))
  const median = rates.sort((one, other) => one - other)[Math.floor(DRAG_ROUNDS / 2)]!
  print('check.drag', Math.round(median), 'checks/s', DRAG_GOAL, { slowed: SLOWED, unslowed: Math.round(full) })
} finally {
  await browser.close()
}
