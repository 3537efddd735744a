import { expect, type Page } from '@playwright/test'

/** A coach makes the team follow what is offered: curriculum, version, one press. */
export async function adopt(page: Page, team: string, curriculum: string): Promise<void> {
  await page.goto('/')
  await page.getByRole('link', { name: 'Curricula', exact: true }).click()
  await page.getByRole('link', { name: curriculum }).click()
  await page.getByRole('link', { name: /^Version 1/ }).click()
  await page.getByRole('button', { name: `${team} follows version 1` }).click()
  await expect(page.getByRole('status').filter({ hasText: `${team} follows version 1 from` })).toBeVisible()
}

export async function openTonight(page: Page, team: string): Promise<void> {
  await page.goto('/')
  await page.getByRole('link', { name: `Tonight with ${team}` }).click()
  await expect(page.getByRole('heading', { name: 'Who came' })).toBeVisible()
}

type Turnout = {
  readonly away?: readonly string[]
  readonly sitsOut?: readonly string[]
  readonly guests?: readonly string[]
}

/** Ticks a turnout that starts from everybody: one tap strikes a child out. */
export async function tickTurnout(page: Page, { away = [], sitsOut = [], guests = [] }: Turnout): Promise<void> {
  for (const child of away) {
    await page.getByRole('button', { name: child, exact: true }).click()
    await expect(page.getByRole('button', { name: `${child} out` })).toHaveAttribute('aria-pressed', 'false')
  }
  if (sitsOut.length + guests.length === 0) return
  await page.getByText(/sits? out\. .*guest/).click()
  for (const child of sitsOut) await page.getByRole('checkbox', { name: child }).check()
  for (const guest of guests) {
    await page.getByLabel('Initials').fill(guest)
    await page.getByRole('button', { name: 'Add', exact: true }).click()
    await expect(page.getByRole('button', { name: `Guest ${guest} goes` })).toBeVisible()
  }
}

/** The evening's parts as they are read out: title and minutes, in order. */
export async function readEvening(page: Page, slotMinutes: number): Promise<readonly string[]> {
  const parts = page.getByRole('list', { name: `${slotMinutes} minutes` }).getByRole('listitem')
  await expect(parts.first()).toBeVisible()
  return parts.allInnerTexts()
}

export function minutesIn(parts: readonly string[]): number {
  return parts.reduce((sum, part) => sum + Number(/(\d+) minutes/.exec(part)?.[1] ?? 0), 0)
}

/** Walks the set-out to its end, one press a stop, and answers the sentences in order. */
export async function walkSetOut(page: Page): Promise<readonly string[]> {
  const stops = page.getByRole('main').locator('ol > li')
  await expect(page.getByRole('heading', { level: 1, name: /^Set out, \d+ paces$/ })).toBeVisible()
  const sentences = await stops.allInnerTexts()
  await page.getByRole('button', { name: 'Bag is down, go on' }).click()
  expect(sentences.length).toBeGreaterThan(4)
  for (let stop = 1; stop < sentences.length; stop += 1) {
    const last = stop === sentences.length - 1
    await page.getByRole('button', { name: last ? /is down, that was the last$/ : /is down, go on$/ }).click()
  }
  await expect(page.getByRole('heading', { name: 'Everything is out' })).toBeVisible()
  return sentences
}

export type LineUp = { readonly title: string; readonly places: readonly (readonly [string, string])[] }

/** Every line-up of the evening, by pressing on to the last. */
export async function readLineUps(page: Page): Promise<readonly LineUp[]> {
  const lineUps: LineUp[] = []
  const figure = (await page.getByText(/^Line-up 1 of \d+$/).textContent()) ?? ''
  const all = Number(/of (\d+)/.exec(figure)?.[1])
  for (let number = 1; number <= all; number += 1) {
    await expect(page.getByText(`Line-up ${number} of ${all}`)).toBeVisible()
    const section = page.getByRole('main').locator('section').first()
    const rows = await section.getByRole('listitem').evaluateAll((items) =>
      items.map((item) => {
        const [position, name] = [...item.children].map((child) => child.childNodes[0]?.textContent ?? '')
        return [position ?? '', name ?? ''] as const
      }),
    )
    lineUps.push({ title: (await section.getByRole('heading').textContent()) ?? '', places: rows })
    if (number < all) await page.getByRole('button', { name: 'Next line-up' }).click()
  }
  return lineUps
}

/** Every position that each child plays in these line-ups. */
export function positionsHeld(lineUps: readonly LineUp[]): ReadonlyMap<string, ReadonlySet<string>> {
  const held = new Map<string, Set<string>>()
  for (const { places } of lineUps)
    for (const [position, child] of places) held.set(child, (held.get(child) ?? new Set()).add(position))
  return held
}

/** Pages of the sheet as a printer gets it: on the paper that the sheet asks for, or on what lies in the tray. */
export async function printedPages(page: Page, tray?: 'Letter'): Promise<number> {
  const paper = tray === undefined ? { preferCSSPageSize: true } : { format: tray }
  const pdf = await page.pdf({ ...paper, printBackground: true })
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0
}

/** How many millimetres the printed sheet stands out beyond what paper of this width leaves between its margins. */
export async function cutMillimetres(page: Page, paperMm: number): Promise<number> {
  const PIXELS_A_MM = 96 / 25.4
  const { marginMm, room } = { marginMm: 10, room: page.viewportSize() }
  const width = Math.floor((paperMm - 2 * marginMm) * PIXELS_A_MM)
  await page.emulateMedia({ media: 'print' })
  await page.setViewportSize({ width, height: 1000 })
  const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
  await page.emulateMedia({ media: null })
  if (room !== null) await page.setViewportSize(room)
  return beyond / PIXELS_A_MM
}
