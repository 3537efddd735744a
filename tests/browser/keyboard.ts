import { expect, type Locator, type Page } from '@playwright/test'

const PRESSES_MOST = 120

/** Presses Tab until this control has the focus; red where the keyboard never gets there. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible()
  for (let press = 0; press < PRESSES_MOST; press += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`${PRESSES_MOST} times Tab do not lead to ${target}`)
}

export async function pressByKeyboard(page: Page, target: Locator, key: 'Enter' | 'Space' = 'Enter'): Promise<void> {
  await tabTo(page, target)
  await expectVisibleFocus(page)
  await page.keyboard.press(key)
}

/** Whoever goes by keyboard must see where they are: an outline on the control or on the line that holds it. */
async function expectVisibleFocus(page: Page): Promise<void> {
  const isSeen = await page.evaluate(() =>
    [document.activeElement, document.activeElement?.closest('label')].some((element) => {
      if (element === null || element === undefined) return false
      const { outlineStyle, outlineWidth } = getComputedStyle(element)
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2
    }),
  )
  expect(isSeen, 'the focus is visible').toBe(true)
}

/** One answer of a group: Tab leads to the group, the arrows to the answer, as browsers do it. */
export async function chooseByKeyboard(page: Page, group: string, answer: string): Promise<void> {
  const choices = page.getByRole('group', { name: group }).getByRole('radio')
  await tabTo(page, choices.first())
  await page.keyboard.press('Space')
  const wanted = page.getByRole('group', { name: group }).getByRole('radio', { name: answer })
  for (let press = 0; press < (await choices.count()); press += 1) {
    if (await wanted.isChecked()) return
    await page.keyboard.press('ArrowDown')
  }
  throw new Error(`the arrows do not lead to “${answer}” of “${group}”`)
}
