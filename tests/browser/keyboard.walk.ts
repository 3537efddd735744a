import { expect, test } from '@playwright/test'
import { sharedEspalier } from './espalier-of-walks'
import { clubDay } from './first-evening/invented'
import { pressByKeyboard, tabTo } from './keyboard'
import { makeEmptyClub } from './start-espalier'
import { visit } from './visitor'

test('an administrator signs in, adds a person and makes the link without a mouse', async ({ browser }) => {
  const { zone } = clubDay(new Date())
  const link = await makeEmptyClub(sharedEspalier(), { name: 'Otterholm', zone, person: 'Ruth Alder' })
  const administrator = await visit(browser)
  const { page } = administrator
  await page.goto(link)
  await pressByKeyboard(page, page.getByRole('button', { name: 'Sign in', exact: true }))
  await expect(page.getByRole('heading', { name: 'Where to?' })).toBeVisible()

  await pressByKeyboard(page, page.getByRole('link', { name: 'People', exact: true }))
  await expect(page.getByRole('heading', { level: 1, name: 'People' })).toBeVisible()
  await tabTo(page, page.getByLabel('Name'))
  await page.keyboard.type('Edda Marlow')
  await pressByKeyboard(page, page.getByRole('checkbox', { name: /^Technical director/ }), 'Space')
  await pressByKeyboard(page, page.getByRole('button', { name: 'Add', exact: true }))
  await expect(page.getByRole('status').filter({ hasText: 'Edda Marlow is added.' })).toBeVisible()

  await pressByKeyboard(page, page.getByRole('button', { name: 'Make a sign-in link: Edda Marlow' }))
  const dialog = page.getByRole('dialog', { name: 'Link for Edda Marlow' })
  await expect(dialog).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
  // The focus goes back to where the question came from.
  await expect(page.getByRole('button', { name: /link: Edda Marlow/ })).toBeFocused()
  await administrator.leave()
})
