import { expect, test } from '@playwright/test'
import { goFromHome } from './administrator'
import { PEOPLE, SPARKS } from './invented'
import { arrive } from './story'

/** From planned and done to a proof. */
export function walkAuditor(): void {
  test.describe('the auditor', () => {
    test('goes from planned and done to a record, and the page proves its line', async ({ browser }) => {
      const auditor = await arrive(browser, 'auditor')
      const { page } = auditor
      await goFromHome(page, 'Planned and done')
      await expect(page).toHaveTitle(/^Planned and done · /)
      await auditor.lookAround()
      await page.getByRole('link', { name: new RegExp(`${SPARKS}, Know the places.* done [1-9]\\d* minutes`) }).click()
      const evidence = page.getByRole('region', { name: `Know the places, ${SPARKS}` })
      await expect(evidence).toContainText(/8 children, guests: 1/)
      await expect(evidence).toContainText(PEOPLE.assistant)
      await evidence.getByRole('button', { name: /^Check this line/ }).click()
      await expect(evidence.getByText(/^It holds: line \d+ is in the book of \d+ lines/)).toBeVisible()
      await expect(evidence.getByText(/not sealed yet/)).toBeVisible()
      await auditor.lookAround()
      await goFromHome(page, 'Record book')
      await expect(page.getByText('not sealed yet')).toBeVisible()
      await expect(page.getByRole('table').getByText('Session reported')).toHaveCount(2)
      await expect(page.getByRole('table').getByText('Version published')).toHaveCount(2)
      await auditor.lookAround()
    })
  })
}
