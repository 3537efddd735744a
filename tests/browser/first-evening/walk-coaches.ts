import { expect, test } from '@playwright/test'
import { demoLink } from '../espalier-of-walks'
import { chooseByKeyboard, pressByKeyboard, tabTo } from '../keyboard'
import { PHONE, signIn, type Visitor, visit } from '../visitor'
import {
  adopt,
  cutMillimetres,
  minutesIn,
  openTonight,
  positionsHeld,
  printedPages,
  readEvening,
  readLineUps,
  tickTurnout,
  walkSetOut,
} from './coach'
import { BARE_HALF, PEOPLE, RIVER, RIVER_CURRICULUM, SPARKS, SPARKS_CURRICULUM } from './invented'
import { arrive, own, visitors } from './story'

const A4_WIDTH_MM = 210
const LETTER_WIDTH_MM = 215.9

/** Three turnouts, a set-out, line-ups, a sheet and two reports. */
export function walkCoaches(): void {
  test.describe('the coaches', () => {
    let coach: Visitor

    test('a coach adopts what is offered and opens tonight on a phone', async ({ browser }) => {
      coach = await arrive(browser, 'coach', PHONE)
      const { page } = coach
      await adopt(page, SPARKS, SPARKS_CURRICULUM)
      await coach.lookAround()
      await openTonight(page, SPARKS)
      await expect(page.getByRole('heading', { level: 1, name: `04:45 at ${BARE_HALF.venue}` })).toBeVisible()
      await page.getByLabel('Space').selectOption({ label: `${BARE_HALF.name}, 39 × 27 m` })
    })

    test('with 5 of 10 gets games only, and the reason', async () => {
      const { page } = coach
      const away = ['Pim', 'Vik', 'Tam', 'Xan', 'Yara']
      await tickTurnout(page, { away })
      await expect(page.getByText('5 of 10', { exact: true })).toBeVisible()
      await expect(
        page.getByText(/Know the places needs 5 and a goalkeeper; 5 came\. Games only tonight\./),
      ).toBeVisible()
      const parts = await readEvening(page, 65)
      expect(minutesIn(parts)).toBe(65)
      expect(parts.join(' ')).not.toContain('Tonight on the left')
      await expect(page.getByRole('link', { name: 'The pattern, and who plays where' })).toBeHidden()
      await coach.lookAround()
      for (const child of away) await page.getByRole('button', { name: `${child} out` }).click()
    })

    test('with 8 of 10, a guest and one who sits out gets a plan that fills the slot', async () => {
      const { page } = coach
      await tickTurnout(page, { away: ['Pim', 'Vik'], sitsOut: ['Una'], guests: ['KB'] })
      await expect(page.getByText('8 of 10, 1 more')).toBeVisible()
      await expect(page.getByText('Tonight on the left').first()).toBeVisible()
      const parts = await readEvening(page, 65)
      expect(minutesIn(parts)).toBe(65)
      own.evening = parts
      await coach.lookAround()
      await page.getByRole('link', { name: 'The plan, with areas and groups' }).click()
      await expect(page.getByRole('heading', { level: 1, name: 'The plan' })).toBeVisible()
      await coach.lookAround()
      await page.getByRole('link', { name: 'Tonight', exact: true }).click()
    })

    test('walks the set-out in paces, by nothing that is not there', async () => {
      const { page } = coach
      await page.getByRole('link', { name: 'Set out', exact: true }).click()
      await expect(page.getByRole('heading', { level: 1, name: /^Set out, \d+ paces$/ })).toBeVisible()
      await coach.lookAround()
      own.setOut = await walkSetOut(page)
      for (const stop of own.setOut.slice(2)) expect(stop).toMatch(/\d+ paces?/)
      // The space has no line and no goal, so no sentence may lead to one.
      expect(own.setOut.join(' ')).not.toMatch(/penalty|build-out line|halfway|goal line|goalpost|touchline/i)
    })

    test('reads line-ups by block and side, and the script', async () => {
      const { page } = coach
      await page.getByRole('link', { name: 'Who plays where' }).click()
      await expect(page.getByRole('heading', { level: 1, name: 'Who plays where' })).toBeVisible()
      await coach.lookAround()
      await expect(page.getByRole('button', { name: /^1 GK passes to LCB/ })).toBeVisible()
      const lineUps = await readLineUps(page)
      expect(lineUps.some(({ title }) => title.endsWith('left side'))).toBe(true)
      expect(lineUps.some(({ title }) => title.endsWith('right side'))).toBe(true)
      const came = ['Orla', 'Quin', 'Suki', 'Tam', 'Xan', 'Yara', 'Zeb', 'KB (guest)']
      for (const { places } of lineUps) expect(new Set(places.map(([, child]) => child)).size).toBe(places.length)
      const held = positionsHeld(lineUps)
      expect([...held.keys()].sort()).toEqual([...came].sort())
      for (const positions of held.values()) expect(positions.size).toBeLessThanOrEqual(3)
      // Only who said yes stands in goal.
      for (const { places } of lineUps) expect(['Orla', 'Xan']).toContain(new Map(places).get('GK'))
    })

    test('prints one sheet, which is one page of A4 and of Letter, with nothing cut and no unit alone on a line', async () => {
      const { page } = coach
      await page.getByRole('link', { name: 'Tonight', exact: true }).click()
      await page.getByRole('link', { name: 'One sheet to print' }).click()
      await expect(page.getByRole('button', { name: 'Print' })).toBeVisible()
      await coach.lookAround()
      expect(await printedPages(page)).toBe(1)
      expect(await printedPages(page, 'Letter')).toBe(1)
      for (const paperMm of [A4_WIDTH_MM, LETTER_WIDTH_MM])
        expect(await cutMillimetres(page, paperMm)).toBeLessThan(0.5)
      // A measure is one word to whoever breaks lines.
      const measures = (await page.locator('.sheet p').allTextContents()).join('\n').match(/\d\s×\s[\d.]+\sm/g) ?? []
      expect(measures.length).toBeGreaterThan(1)
      expect(measures.filter((measure) => /[^\S\u00a0]/.test(measure))).toEqual([])
    })

    test('reports in three taps', async () => {
      const { page } = coach
      await page.getByRole('link', { name: 'Tonight', exact: true }).click()
      await page.getByRole('link', { name: 'Report', exact: true }).click()
      await expect(page.getByRole('heading', { level: 1, name: 'Report' })).toBeVisible()
      await coach.lookAround()
      await page.getByRole('group', { name: 'How far' }).getByText('Places and names').click()
      await page.getByRole('group', { name: 'How often' }).getByText('About half').click()
      await page.getByRole('group', { name: 'Which adult' }).getByText(PEOPLE.assistant).click()
      await page.getByRole('button', { name: 'Send the report' }).click()
      await expect(page.getByRole('heading', { level: 1, name: 'Sent' })).toBeVisible()
      await coach.lookAround()
    })

    test('corrects the report: it opens with what was sent, and takes its place', async () => {
      const { page } = coach
      await page.getByRole('button', { name: 'Correct it' }).click()
      await expect(page.getByRole('heading', { level: 1, name: 'Correct the report' })).toBeVisible()
      await expect(page.getByText(`This is what ${PEOPLE.coach} sent.`)).toBeVisible()
      for (const [question, answer] of [
        ['How far', 'Places and names'],
        ['How often', 'About half'],
        ['Which adult', PEOPLE.assistant],
      ] as const)
        await expect(page.getByRole('group', { name: question }).getByRole('radio', { name: answer })).toBeChecked()
      await coach.lookAround()
      await page.getByRole('group', { name: 'How often' }).getByText('Mostly').click()
      await page.getByRole('button', { name: 'Send the correction' }).click()
      await expect(page.getByRole('heading', { level: 1, name: 'Corrected' })).toBeVisible()
      // What stands now is the correction.
      await page.getByRole('button', { name: 'Correct it' }).click()
      await expect(page.getByRole('group', { name: 'How often' }).getByRole('radio', { name: 'Mostly' })).toBeChecked()
      await page.getByRole('link', { name: 'Tonight', exact: true }).click()
    })

    test('another coach ticks 13 and two guests and reports, by keyboard alone', async ({ browser }) => {
      const other = await arrive(browser, 'otherCoach', PHONE)
      const { page } = other
      await adopt(page, RIVER, RIVER_CURRICULUM)
      await page.goto('/')
      await pressByKeyboard(page, page.getByRole('link', { name: `Tonight with ${RIVER}` }))
      await expect(page.getByRole('heading', { name: 'Who came' })).toBeVisible()
      await pressByKeyboard(page, page.getByRole('button', { name: 'Brin', exact: true }), 'Space')
      await expect(page.getByText('12 of 13', { exact: true })).toBeVisible()
      await pressByKeyboard(page, page.getByRole('button', { name: 'Brin out' }), 'Space')
      await pressByKeyboard(page, page.locator('summary').filter({ hasText: 'No guest' }))
      for (const guest of ['AR', 'JW']) {
        await tabTo(page, page.getByLabel('Initials'))
        await page.keyboard.type(guest)
        await page.keyboard.press('Enter')
      }
      await expect(page.getByText('13 of 13, 2 more')).toBeVisible()
      await expect(page.getByText('Tonight on the right').first()).toBeVisible()
      expect(minutesIn(await readEvening(page, 80))).toBe(80)
      await pressByKeyboard(page, page.getByRole('link', { name: 'Report', exact: true }))
      await chooseByKeyboard(page, 'How far did it go?', 'Against poles')
      await chooseByKeyboard(page, 'How often did it get out?', 'Mostly')
      await chooseByKeyboard(page, 'Which adult was there too?', 'Nobody')
      await pressByKeyboard(page, page.getByRole('button', { name: 'Send the report' }))
      await expect(page.getByRole('heading', { level: 1, name: 'Sent' })).toBeVisible()
    })

    test('the plan is made for this club: it is not the plan of the demo club', async ({ browser }) => {
      const demo = await visit(browser, PHONE)
      visitors.set('demo', demo)
      await signIn(demo, demoLink('coach, U10 Larks'))
      const { page } = demo
      await openTonight(page, 'U10 Larks')
      await demo.lookAround()
      const list = page.getByRole('list', { name: /^\d+ minutes$/ }).getByRole('listitem')
      await expect(list.first()).toBeVisible()
      const evening = await list.allInnerTexts()
      await page.getByRole('link', { name: 'Set out', exact: true }).click()
      const setOut = await walkSetOut(page)
      expect(own.evening.length).toBeGreaterThan(3)
      expect(own.evening).not.toEqual(evening)
      expect(own.evening.map((part) => part.replace(/\d\d:\d\d/, ''))).not.toEqual(
        evening.map((part) => part.replace(/\d\d:\d\d/, '')),
      )
      expect(own.setOut).not.toEqual(setOut)
    })
  })
}
