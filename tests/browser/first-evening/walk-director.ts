import { expect, type Page, test } from '@playwright/test'
import type { Visitor } from '../visitor'
import { goFromHome } from './administrator'
import {
  beginCurriculum,
  publish,
  savePattern,
  writeModelSession,
  writePattern,
  writeProgression,
  writeTeaching,
} from './director'
import {
  RIVER_CURRICULUM,
  RIVER_SESSION,
  RIVER_STAGES,
  ROUND_RIGHT,
  SPARKS_CURRICULUM,
  SPARKS_SESSION,
  SPARKS_STAGES,
  THIRD_MAN,
} from './invented'
import { arrive } from './story'

/** Two patterns, a progression, a session, and two refusals on the way to a version. */
export function walkDirector(): void {
  test.describe('the technical director', () => {
    let director: Visitor

    test('writes a 7v7 pattern with forms and reads script, drawing and notes', async ({ browser }) => {
      director = await arrive(browser, 'director')
      const { page } = director
      await goFromHome(page, 'Patterns')
      await writePattern(page, {
        ...THIRD_MAN,
        format: '7v7',
        ageGroup: 'U9',
        side: 'the left',
        receivers: ['LCB', 'CM', 'LW'],
        runners: { 2: 'RCB', 3: 'RW' },
      })
      await expect(page.getByRole('button', { name: /^2 LCB passes to CM.* RCB runs as LCB plays/ })).toBeVisible()
      await expect(page.getByRole('img', { name: THIRD_MAN.title })).toBeVisible()
      const aside = page.getByLabel('Metres to the right, where LW starts')
      await aside.fill('-9')
      await expect(page.getByText('The starting place of LW is 9 m (12 paces) off the space.')).toBeVisible()
      await savePattern(page, 1)
      await director.lookAround()
    })

    test('writes a 9v9 pattern', async () => {
      const { page } = director
      await goFromHome(page, 'Patterns')
      await writePattern(page, {
        ...ROUND_RIGHT,
        format: '9v9',
        ageGroup: 'U11',
        side: 'the right',
        receivers: ['RB', 'RCM', 'RW'],
        runners: { 2: 'RB' },
      })
      await writeTeaching(page, 'wide')
      await savePattern(page, 1)
      await goFromHome(page, 'Patterns')
      await expect(page.getByRole('table').getByRole('row')).toHaveCount(3)
      await director.lookAround()
    })

    test('writes a progression of three stages and a model session', async () => {
      const { page } = director
      await goFromHome(page, 'Curricula')
      await beginCurriculum(page, { name: SPARKS_CURRICULUM, ageGroup: 'U9', format: '7v7' })
      const before = page.getByRole('region', { name: 'In the way of version 1' })
      await expect(before).toContainText('The curriculum has no stage yet.')
      await expect(before).toContainText('The curriculum has no model session yet.')
      await writeProgression(page, 'Out on the left', SPARKS_STAGES)
      await expect(before).not.toContainText('no stage yet')
      await expect(before).toContainText('no model session yet')
      await writeModelSession(page, 'An evening by the weir', SPARKS_SESSION)
      await page.getByRole('button', { name: 'Save', exact: true }).click()
      await expect(page.getByText('Version 2 is saved.')).toBeVisible()
      await director.lookAround()
    })

    test('is told before the press of all that is in the way, and may not publish while any of it is', async () => {
      const { page } = director
      const before = page.getByRole('region', { name: 'In the way of version 1' })
      await expect(before).toContainText('what good looks like is missing')
      await expect(before).toContainText('The starting place of LW is 9 m')
      const refusal = page.getByRole('dialog').getByRole('alert')
      await director.whileRefused(422, () => publish(page, SPARKS_CURRICULUM))
      await expect(refusal).toContainText('what good looks like is missing')
      await expect(refusal).toContainText('The starting place of LW is 9 m')
      await director.lookAround()
      await refusal.getByRole('link', { name: 'Open the pattern' }).click()
      await expect(page.getByRole('heading', { level: 1, name: THIRD_MAN.title })).toBeVisible()
      await writeTeaching(page, 'in the middle')
      await page.getByLabel('Metres to the right, where LW starts').fill('1.5')
      await savePattern(page, 2)
      await openDraft(page, SPARKS_CURRICULUM)
      await expect(before).toBeHidden()
    })

    test('publishes: the version is numbered, hashed and in the record book', async () => {
      const { page } = director
      await openDraft(page, SPARKS_CURRICULUM)
      await publish(page, SPARKS_CURRICULUM)
      await expect(page.getByRole('heading', { level: 1, name: `${SPARKS_CURRICULUM}, version 1` })).toBeVisible()
      await expect(page.getByText('signature pending')).toBeVisible()
      await page.getByText(/^Hash [0-9a-f]+/).click()
      await expect(page.getByText(/^SHA-256 of its content: [0-9a-f]{64}/)).toBeVisible()
      await director.lookAround()

      await goFromHome(page, 'Curricula')
      await beginCurriculum(page, { name: RIVER_CURRICULUM, ageGroup: 'U11', format: '9v9' })
      await writeProgression(page, 'Out on the right', RIVER_STAGES)
      await writeModelSession(page, 'An evening by the mill', RIVER_SESSION)
      await page.getByRole('button', { name: 'Save', exact: true }).click()
      await expect(page.getByText('Version 2 is saved.')).toBeVisible()
      await publish(page, RIVER_CURRICULUM)
      await expect(page.getByRole('heading', { level: 1, name: `${RIVER_CURRICULUM}, version 1` })).toBeVisible()
    })
  })
}

async function openDraft(page: Page, curriculum: string): Promise<void> {
  await goFromHome(page, 'Curricula')
  await page.getByRole('link', { name: curriculum }).click()
  await page.getByRole('link', { name: 'Write the draft' }).click()
  await expect(page.getByRole('heading', { level: 1, name: `Draft of ${curriculum}` })).toBeVisible()
}
