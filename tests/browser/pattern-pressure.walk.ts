import { expect, type Page, test } from '@playwright/test'
import { type CheckChoices, checkChoicesOf, coverOf } from '../../packages/domain/src/check/index'
import { pressureOn, sayBehaviours, sayWorksAgainst } from '../../packages/domain/src/check/pressure/index'
import type { PatternDocument } from '../../packages/domain/src/pattern/index'
import { nominalSpace } from '../../packages/domain/src/pitch/index'
import { demoLink } from './espalier-of-walks'
import { tabTo } from './keyboard'
import { axeFaults, DESK, PHONE, sidewaysPixels, signIn, type Visitor, visit } from './visitor'

// What a page shows of looks and pressure is what the domain computes in this test for the same document.

const TOLD = 'Worked out for what stands here.'
/** A worker on a busy machine; on an idle one a second or two. */
const WORKED_OUT = { timeout: 60_000 }

test.describe.configure({ mode: 'serial' })

let director: Visitor
let address: string
let saved: { readonly document: PatternDocument; readonly choices: CheckChoices }

test.beforeAll(async ({ browser }) => {
  director = await visit(browser)
  await signIn(director, demoLink('director'))
  const { page } = director
  await page.getByRole('link', { name: 'Patterns', exact: true }).click()
  await page.getByRole('table').getByRole('link', { name: 'Off the wall on the right' }).click()
  await expect(page.getByRole('list', { name: 'Script' })).toBeVisible()
  address = page.url()
  saved = await readSaved(page)
})

test.afterEach(() => director.expectNoFaults())
test.afterAll(() => director.leave())

/** The document and the club's settings, as the API answers them to this login. */
async function readSaved(page: Page): Promise<typeof saved> {
  const [, clubId, patternId] = /clubs\/([^/]+)\/patterns\/([^/?]+)/.exec(page.url()) ?? []
  const answers = await page.evaluate(
    (paths) => Promise.all(paths.map((path) => fetch(path).then((answer) => answer.json()))),
    [`/v1/clubs/${clubId}/patterns/${patternId}`, `/v1/clubs/${clubId}`],
  )
  return { document: answers[0].document, choices: checkChoicesOf(answers[1].settings) }
}

/** The sentences that must stand on the page. */
function computed(document: PatternDocument, surface: 'normal' | 'heavy' = 'normal') {
  const space = nominalSpace(document.formatId)
  const options = { choices: saved.choices, surface }
  const report = pressureOn(document, space, options)
  return {
    headline: sayWorksAgainst(document, report),
    behaviours: sayBehaviours(document, report),
    cover: coverOf(document, space, options).flatMap((look) => look.counts.map((count) => count.sentence)),
    holes: coverOf(document, space, options).flatMap((look) =>
      look.counts.flatMap((count) => count.holes.map((hole) => hole.words)),
    ),
  }
}

const pressure = (page: Page) => page.getByRole('region', { name: 'Under pressure' })
const looks = (page: Page) => page.getByRole('region', { name: 'Looks' })
const worked = (page: Page) => expect(pressure(page).getByRole('status')).toHaveText(TOLD, WORKED_OUT)

async function expectShown(page: Page, expected: ReturnType<typeof computed>): Promise<void> {
  await worked(page)
  await expect(pressure(page).getByText(expected.headline, { exact: true })).toBeVisible()
  for (const sentence of expected.behaviours) await expect(pressure(page).getByText(sentence)).toBeVisible()
  await expect(looks(page).getByRole('listitem').filter({ hasText: 'may stand' })).toHaveText([...expected.cover])
}

/** As a visitor looks around, but from the end of the page, where the bar that saves covers half of no press. */
async function lookAroundFromTheEnd(page: Page): Promise<void> {
  for (const size of [PHONE, DESK]) {
    await page.setViewportSize(size)
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight))
    expect(await axeFaults(page)).toEqual([])
    expect(await sidewaysPixels(page)).toBe(0)
  }
}

function withTouches(document: PatternDocument, at: number, touches: 1 | 2): PatternDocument {
  const steps = document.steps.map((step, index) =>
    index === at && step.action.kind === 'pass' ? { ...step, action: { ...step.action, touches } } : step,
  )
  return { ...document, steps }
}

test('a director reads how far a pattern gets and from where its looks are open, as the domain computes it', async () => {
  const { page } = director
  await expectShown(page, computed(saved.document))
  await expect(pressure(page).getByText('not a forecast')).toBeVisible()
  await director.lookAround()
})

test('nothing moves when the answers come', async () => {
  const { page } = director
  for (const size of [PHONE, page.viewportSize() ?? PHONE]) {
    await page.setViewportSize(size)
    await page.goto(address)
    await page.evaluate(() => {
      const seen = globalThis as unknown as { shifted: number }
      seen.shifted = 0
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) seen.shifted += (entry as PerformanceEntry & { value: number }).value
      }).observe({ type: 'layout-shift', buffered: true })
    })
    await pressure(page).scrollIntoViewIfNeeded()
    await worked(page)
    const shifted = await page.evaluate(() => (globalThis as unknown as { shifted: number }).shifted)
    // What a browser's own measure calls good ends at 0.1; half a line of one section is far below.
    expect(shifted).toBeLessThan(0.05)
  }
})

test('a step that is changed changes the answers, and the last of several quick changes wins', async () => {
  const { page } = director
  const changed = computed(withTouches(saved.document, 1, 1))
  expect(changed).not.toEqual(computed(saved.document))
  await page.locator('[data-step]', { hasText: 'passes to RW' }).first().click()
  const touches = page.getByRole('combobox', { name: 'Touches' })
  for (const choice of ['one', 'two', 'one', 'two', 'one']) await touches.selectOption(choice)
  await expectShown(page, changed)
  await touches.selectOption('two')
  await expectShown(page, computed(saved.document))
})

test('a title that is typed asks nothing anew', async () => {
  const { page } = director
  const revision = () => pressure(page).locator('[data-revision]').getAttribute('data-revision')
  const before = await revision()
  await page.getByRole('textbox', { name: 'Title' }).fill('Off the wall, on the right')
  await page.getByRole('textbox', { name: 'Title' }).fill('Off the wall on the right')
  await worked(page)
  expect(await revision()).toBe(before)
})

test('the ground is chosen on the page, and the answers are for it', async () => {
  const { page } = director
  const heavy = computed(saved.document, 'heavy')
  expect(heavy).not.toEqual(computed(saved.document))
  await page.getByRole('combobox', { name: 'Ground it is checked on' }).selectOption('heavy')
  await expectShown(page, heavy)
})

test('which look is drawn is chosen by keyboard, and every answer has its letter on the pitch', async () => {
  const { page } = director
  await page.goto(address)
  const desk = page.locator('.pattern-board [data-answer]:visible')
  await expect(desk).toHaveText(['A', 'B', 'A'])
  await page.locator('[data-step]', { hasText: 'carries it' }).first().click()
  await page.getByRole('button', { name: 'Add a look before step 4' }).click()
  await expect(desk).toHaveText(['2A', '2B', '4A', 'A'])
  await worked(page)
  const choice = page.getByRole('combobox', { name: 'The look that is drawn' })
  await expect(looks(page).getByText('the ball of step 2 as drawn is best').filter({ visible: true })).toBeVisible()
  await tabTo(page, choice)
  await page.keyboard.press('ArrowDown')
  await expect(choice.locator('option:checked')).toHaveText('before step 4, by CM')
  await expect(looks(page).getByText('the ball of step 4 as drawn is best').filter({ visible: true })).toBeVisible()
  await looks(page).getByText('The drawing in words').filter({ visible: true }).click()
  await expect(
    looks(page)
      .getByText(/^X near the own goal, on the left: /)
      .filter({ visible: true }),
  ).toBeVisible()
  await lookAroundFromTheEnd(page)
})

test('read as a coach does, the same holes are told without a percentage', async () => {
  const { page } = director
  await page.goto(`${address}?view=read`)
  await worked(page)
  const expected = computed(saved.document)
  await expect(pressure(page).getByText(expected.headline, { exact: true })).toBeVisible()
  for (const hole of expected.holes) await expect(looks(page).getByText(hole).first()).toBeVisible()
  expect(await page.locator('main').textContent()).not.toContain('%')
  await director.lookAround()
})

test('where no worker can be had the notes stand all the same, and the page says so', async () => {
  const page = await director.context.newPage()
  await page.addInitScript(() => Reflect.deleteProperty(globalThis, 'Worker'))
  await page.goto(`${address}?view=read`)
  await expect(pressure(page).getByRole('status')).toContainText('The notes at the steps hold all the same.')
  await expect(page.getByText(/^CM stops 4\.1 m/).first()).toBeVisible()
  await page.close()
})
