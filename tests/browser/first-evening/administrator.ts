import { expect, type Page } from '@playwright/test'
import type { ClubDay } from './invented'

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const

/** What an administrator does on the pages of the club, each as a person does it: by the words on the screen. */
export async function goFromHome(page: Page, way: string): Promise<void> {
  await page.goto('/')
  await page.getByRole('link', { name: way, exact: true }).click()
  await expect(page.getByRole('heading', { level: 1, name: way })).toBeVisible()
}

export async function addSeason(page: Page, day: ClubDay): Promise<void> {
  await goFromHome(page, 'Teams and seasons')
  const form = page.getByRole('region', { name: 'Add a season' })
  await form.getByLabel('Season').fill('Weir season')
  await form.getByLabel('First day').fill(day.seasonFrom)
  await form.getByLabel('Last day').fill(day.seasonTo)
  await form.getByRole('button', { name: 'Add the season' }).click()
  await expect(page.getByRole('status').filter({ hasText: 'Weir season is added.' })).toBeVisible()
}

type TeamWish = { readonly name: string; readonly ageGroup: string; readonly category: string; readonly format: string }

export async function addTeam(page: Page, wish: TeamWish): Promise<void> {
  const form = page.getByRole('region', { name: 'Add a team' })
  await form.getByLabel('Team', { exact: true }).fill(wish.name)
  await form.getByLabel('Age group').selectOption(wish.ageGroup)
  await form.getByLabel('Category').selectOption(wish.category)
  await form.getByLabel('Format').selectOption({ label: wish.format })
  await form.getByRole('button', { name: 'Add the team' }).click()
  await expect(page.getByRole('link', { name: wish.name })).toBeVisible()
}

type SpaceWish = {
  readonly venue: string
  readonly name: string
  readonly length: string
  readonly width: string
  readonly format: string
  readonly lines: 'painted' | 'not there'
  readonly ownGoal: string
}

export async function measureHalf(page: Page, wish: SpaceWish): Promise<void> {
  const form = page.getByRole('region', { name: 'Measure a space' })
  await form.getByLabel('Place').fill(wish.venue)
  await form.getByLabel('Name').fill(wish.name)
  await form.getByLabel('Lines of the format').selectOption({ label: wish.format })
  await form.getByLabel('What it is').selectOption({ label: 'half a pitch, the half the team builds out from' })
  await form.getByLabel(/^Length/).fill(wish.length)
  await form.getByLabel(/^Width/).fill(wish.width)
  const lines = form.getByRole('group', { name: 'What shows on the ground' })
  for (const line of await lines.getByRole('combobox').all()) await line.selectOption({ label: wish.lines })
  await form.getByLabel(/^Own goal/).fill(wish.ownGoal)
  await form.getByLabel(/^Other goal/).fill('')
  await form.getByRole('button', { name: 'Keep this space' }).click()
  await expect(page.getByRole('link', { name: `${wish.venue}, ${wish.name}` })).toBeVisible()
}

export async function countEquipment(page: Page, pieces: Readonly<Record<string, number>>): Promise<void> {
  const form = page.getByRole('region', { name: 'Count equipment' })
  for (const [kind, count] of Object.entries(pieces)) await form.getByLabel(`${kind} (pieces)`).fill(String(count))
  await form.getByRole('button', { name: 'Keep these counts' }).click()
  await expect(page.getByRole('status').filter({ hasText: 'The counts are kept.' })).toBeVisible()
}

type SlotWish = {
  readonly start: string
  readonly minutes: number
  readonly space: string
  /** A last day of its own, where it is not the season's. */
  readonly until?: string
}

/** A weekly slot on the weekday that is today in the club's zone. */
export async function addSlotToday(page: Page, day: ClubDay, wish: SlotWish): Promise<void> {
  const form = page.getByRole('region', { name: 'Add a weekly slot' })
  await form.getByLabel('Day').selectOption({ label: WEEKDAYS[day.weekday - 1] ?? '' })
  await form.getByLabel('Start').fill(wish.start)
  await form.getByLabel(/^Minutes/).fill(String(wish.minutes))
  await form.getByLabel('Space').selectOption({ label: wish.space })
  if (wish.until !== undefined) await form.getByLabel('Until').fill(wish.until)
  await form.getByRole('button', { name: 'Add the slot' }).click()
  const said =
    wish.until === undefined
      ? /^The slot is added(?!.*Only the days)/
      : /Only the days of the season, .* become training dates/
  await expect(page.getByRole('status').filter({ hasText: said })).toBeVisible()
}

/** Pastes a squad as CSV and answers what the preview says; nothing is sent yet. */
export async function previewSquad(page: Page, csv: string): Promise<void> {
  await page.getByLabel('Or paste the rows').fill(csv)
  await page.getByRole('button', { name: 'Look at the rows' }).click()
}

export async function sendSquad(page: Page, count: number): Promise<void> {
  await page.getByRole('button', { name: `Add these ${count} children` }).click()
  await expect(page.getByRole('status').filter({ hasText: `${count} children are in the squad.` })).toBeVisible()
}

/** Adds somebody with these roles and answers the one-time link to pass on. */
export async function addPerson(page: Page, name: string, roles: readonly RegExp[]): Promise<string> {
  const form = page.getByRole('region', { name: 'Add a person' })
  await form.getByLabel('Name').fill(name)
  for (const role of roles) await form.getByRole('checkbox', { name: role }).check()
  await form.getByRole('button', { name: 'Add', exact: true }).click()
  await expect(page.getByRole('status').filter({ hasText: `${name} is added.` })).toBeVisible()
  const link = await newLink(page, name)
  await expect(page.getByRole('row', { name }).getByText('link not used yet')).toBeVisible()
  return link
}

/** Makes somebody a link, which ends those made before, and answers it. */
export async function newLink(page: Page, name: string): Promise<string> {
  await page.getByRole('button', { name: new RegExp(`link: ${name}$`) }).click()
  const dialog = page.getByRole('dialog', { name: `Link for ${name}` })
  const link = await dialog.getByTestId('sign-in-link').textContent()
  await dialog.getByRole('button', { name: 'Done, I have passed it on' }).click()
  return link ?? ''
}
