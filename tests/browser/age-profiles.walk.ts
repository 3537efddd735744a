import { expect, type Page, test } from '@playwright/test'
import { sharedEspalier } from './espalier-of-walks'
import { addSeason, addTeam, goFromHome } from './first-evening/administrator'
import { clubDay } from './first-evening/invented'
import { pressByKeyboard, tabTo } from './keyboard'
import { makeEmptyClub } from './start-espalier'
import { axeFaults, DESK, PHONE, sidewaysPixels, signIn, type Visitor, visit } from './visitor'

// In a small club one person is administrator, technical director and coach.

test.describe.configure({ mode: 'serial', timeout: 60_000 })

let person: Visitor

test.beforeAll(async ({ browser }) => {
  const day = clubDay(new Date())
  const link = await makeEmptyClub(sharedEspalier(), { name: 'Reedham', zone: day.zone, person: 'Una Thorn' })
  person = await visit(browser)
  const { page } = person
  await signIn(person, link)
  await addSeason(page, day)
  await addTeam(page, { name: 'U10 Reeds', ageGroup: 'U10', category: 'mixed', format: '7v7' })
  await goFromHome(page, 'People')
  await page.getByRole('link', { name: 'Una Thorn' }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'Una Thorn' })).toBeVisible()
  await page.getByRole('checkbox', { name: /^Technical director/ }).check()
  await page.getByRole('checkbox', { name: /^Coach of U10 Reeds/ }).check()
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByRole('status').filter({ hasText: 'Saved.' })).toBeVisible()
})

test.afterEach(() => person.expectNoFaults())
test.afterAll(() => person.leave())

/** At the desk and on a phone: axe, and nothing that scrolls sideways. */
async function lookAtBoth(page: Page): Promise<void> {
  for (const size of [PHONE, DESK]) {
    await page.setViewportSize(size)
    expect(await axeFaults(page), `at ${size.width}`).toEqual([])
    expect(await sidewaysPixels(page), `at ${size.width}`).toBe(0)
  }
}

const rowOf = (page: Page, what: string) =>
  page.getByRole('table').getByRole('row', { name: what }).filter({ visible: true })

test('a director sets a value of the club’s own and goes back to the printed one, by keyboard', async () => {
  const { page } = person
  await goFromHome(page, 'Age profiles')
  await expect(rowOf(page, 'Top speed')).toContainText('5.4 m/s')
  await expect(rowOf(page, 'Top speed')).toContainText('as printed')
  await rowOf(page, 'From a sign to the first step').getByText('study').click()
  await expect(rowOf(page, 'From a sign to the first step')).toContainText('Developmental Medicine')

  const field = page.getByLabel('Top speed (m/s)')
  await tabTo(page, field)
  await page.keyboard.type('54')
  await pressByKeyboard(page, page.getByRole('button', { name: 'Save the values' }))
  await expect(page.getByText(/^From 2 to 11\. Outside/)).toBeVisible()
  await field.fill('5.8')
  await lookAtBoth(page)
  await pressByKeyboard(page, page.getByRole('button', { name: 'Save the values' }))
  await expect(page.getByRole('status').filter({ hasText: 'Saved. Patterns of U10' })).toBeVisible()
  await expect(rowOf(page, 'Top speed')).toContainText('5.8 m/s')
  await expect(rowOf(page, 'Top speed').getByText('club', { exact: true })).toBeVisible()
  await expect(page.getByRole('link', { name: 'U10, 1 of the club' })).toHaveAttribute('aria-current', 'page')

  await pressByKeyboard(page, page.getByRole('button', { name: 'Reset to the printed one: Top speed' }))
  await pressByKeyboard(page, page.getByRole('button', { name: 'Save the values' }))
  await expect(rowOf(page, 'Top speed')).toContainText('as printed')
  await page.getByRole('link', { name: 'U12', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'Values of U12' })).toBeVisible()
  await expect(rowOf(page, 'Top speed')).toContainText('6.329 m/s')
})

test('a coach writes down the reach on the team’s page and finds it again', async () => {
  const { page } = person
  await page.goto('/')
  await page.getByRole('link', { name: 'How far U10 Reeds pass' }).click()
  const reach = page.getByRole('region', { name: "How far this team's passes reach" })
  await expect(reach).toContainText('Not measured yet.')
  await expect(reach).toContainText('no names written down')
  await expect(reach.getByRole('listitem').first()).toContainText('Put two cones three metres apart')
  await page.getByLabel('Strong foot (m)').fill('2')
  await page.getByLabel('Other foot (m)').fill('9,5')
  await page.getByRole('button', { name: 'Save the reach' }).click()
  await expect(page.getByText('Metres from 3 to 60.')).toBeVisible()
  await page.getByLabel('Strong foot (m)').fill('14')
  await lookAtBoth(page)
  await pressByKeyboard(page, page.getByRole('button', { name: 'Save the reach' }))
  await expect(page.getByRole('status').filter({ hasText: 'The reach is saved.' })).toBeVisible()
  await expect(reach).toContainText('Strong foot 14 m, other foot 9.5 m, measured on')
})
