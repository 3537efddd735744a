import { mkdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { type Browser, chromium, type Page } from '@playwright/test'
import { browserArguments, findBrowserProgram } from './browser-program'
import { type StartedEspalier, startEspalier } from './start-espalier'

// The README's pictures of the main screens, taken from the invented demo club on demand:
// npx tsx tests/browser/take-pictures.ts

const folder = join(import.meta.dirname, '../../docs/pictures')
const BYTES_MOST = 200_000
const SIZES = { phone: { width: 390, height: 844 }, desk: { width: 1440, height: 900 } } as const

const espalier = await startEspalier()
const browser = await chromium.launch({ executablePath: await findBrowserProgram(), args: [...browserArguments] })
try {
  mkdirSync(folder, { recursive: true })
  await takeCoachsPictures(await signedIn(espalier, browser, 'coach, U10 Larks', SIZES.phone))
  await takeDirectorsPictures(await signedIn(espalier, browser, 'director', SIZES.desk))
  await takeAuditorsPictures(await signedIn(espalier, browser, 'auditor', SIZES.desk))
} finally {
  await browser.close()
  await espalier.stop()
}

async function signedIn(
  { origin, demoLinks }: StartedEspalier,
  from: Browser,
  role: string,
  viewport: (typeof SIZES)[keyof typeof SIZES],
): Promise<Page> {
  const link = demoLinks.find((each) => each.role.startsWith(role))
  if (link === undefined) throw new Error(`the demo club printed no link for ${role}`)
  const context = await from.newContext({ baseURL: origin, viewport, reducedMotion: 'reduce', locale: 'en-GB' })
  const page = await context.newPage()
  await page.goto(link.link)
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await page.getByRole('heading', { name: 'Where to?' }).waitFor()
  return page
}

async function takeCoachsPictures(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Tonight with U10 Larks' }).click()
  await page.getByRole('link', { name: 'Set out', exact: true }).waitFor()
  await take(page, 'tonight')
  const tonight = page.url()
  await page.getByRole('link', { name: 'Set out', exact: true }).click()
  await page.getByRole('heading', { level: 1, name: /^Set out/ }).waitFor()
  await take(page, 'set-out')
  await page.goto(tonight)
  await page.getByRole('link', { name: 'The pattern, and who plays where' }).click()
  await page.getByRole('heading', { level: 1, name: 'Who plays where' }).waitFor()
  await take(page, 'line-ups')
  await page.goto(tonight)
  await page.getByRole('link', { name: 'Report', exact: true }).click()
  await page.getByRole('heading', { level: 1, name: 'Report' }).waitFor()
  await take(page, 'report')
  await page.goto(tonight)
  await page.getByRole('link', { name: 'One sheet to print' }).click()
  await page.getByRole('button', { name: 'Print' }).waitFor()
  // As wide as what A4 leaves between its margins, at 96 pixels an inch; the upper part of the page says enough.
  await page.setViewportSize({ width: 718, height: 720 })
  await page.emulateMedia({ media: 'print' })
  await take(page, 'sheet')
}

async function takeDirectorsPictures(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Patterns', exact: true }).click()
  await page.getByRole('heading', { level: 1, name: 'Patterns' }).waitFor()
  await page.getByRole('table').getByRole('link').first().click()
  await page.getByRole('list', { name: 'Script' }).waitFor()
  await take(page, 'pattern')
  await page.goto('/')
  await page.getByRole('link', { name: 'Curricula', exact: true }).click()
  await page.getByRole('table').getByRole('link').first().click()
  await page.getByRole('link', { name: /^Version 1/ }).click()
  await page.getByRole('heading', { level: 1, name: /version 1$/ }).waitFor()
  await take(page, 'version')
}

async function takeAuditorsPictures(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Planned and done', exact: true }).click()
  await page.getByRole('heading', { level: 1, name: 'Planned and done' }).waitFor()
  await take(page, 'planned-and-done')
  await page.goto('/')
  await page.getByRole('link', { name: 'Record book', exact: true }).click()
  await page.getByRole('heading', { level: 1, name: 'Record book' }).waitFor()
  await page
    .getByRole('button', { name: /^Check this line/ })
    .first()
    .click()
  await page.getByText(/^It holds/).waitFor()
  await take(page, 'record-book')
}

/** A picture of the window as it stands; one that is too heavy for a README is refused. */
async function take(page: Page, name: string): Promise<void> {
  await page.evaluate(() => document.fonts.ready.then(() => undefined))
  const path = join(folder, `${name}.png`)
  await page.screenshot({ path })
  const { size } = statSync(path)
  if (size > BYTES_MOST) throw new Error(`${name}.png has ${size} bytes; at most ${BYTES_MOST}`)
  console.log(`${name}.png ${Math.round(size / 1000)} kB`)
}
