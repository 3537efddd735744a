import { expect, type Page, test } from '@playwright/test'
import { PHONE, signIn, type Visitor } from '../visitor'
import { goFromHome, newLink } from './administrator'
import { openTonight } from './coach'
import { apiAnswer, NOBODY } from './hidden'
import { PEOPLE, RIVER, RIVER_SQUAD, SPARKS, SPARKS_SQUAD } from './invented'
import { ageKits, expectNamesKept, expectNoNames, phoneKeeps } from './phone-keeps'
import { arrive, links, visitors } from './story'

const EVERYBODY = [...SPARKS_SQUAD, ...RIVER_SQUAD]

/** One phone in several hands: what of the children stays on it, and what of a report that has not gone yet. */
export function walkNames(): void {
  test.describe("children's names on a phone", () => {
    let phone: Visitor
    let sparks: string

    test('an unsent report is told of before the sign-out, and a sign-out without an answer takes nothing', async ({
      browser,
    }) => {
      await visitors.get('assistant')?.leave()
      await renewLink('assistant')
      phone = await arrive(browser, 'assistant', PHONE)
      const { page } = phone
      await openTonight(page, SPARKS)
      sparks = page.url()
      await expectNamesKept(page, SPARKS_SQUAD)
      await phone.whileCutOff(async () => {
        await report(page)
        await expect(page.getByRole('heading', { level: 1, name: 'Kept on this phone, not sent yet' })).toBeVisible()
        await page.goto('/')
        await page.getByRole('button', { name: 'Sign out', exact: true }).click()
        const warning = page.getByRole('status').filter({ hasText: /not sent yet\. .* on this phone/ })
        await expect(warning).toBeVisible()
        await page.getByRole('button', { name: 'Sign out all the same' }).click()
        await expect(page.getByText('Not signed out: no answer came.')).toBeVisible()
        const kept = await phoneKeeps(page)
        expect(kept['kits']).toContain(`"${SPARKS_SQUAD[0]}"`)
        expect(kept['outbox']).toContain('report-session')
      })
    })

    test('after the sign-out no name is left here, nor shown by a page that comes back; the report stays', async () => {
      const { page, context } = phone
      const left = await context.newPage()
      await left.goto(sparks)
      await expectNamesKept(left, SPARKS_SQUAD)
      // Opening it again has sent what waited; the report of an assistant stands beside the coach's.
      await expect.poll(async () => (await phoneKeeps(page))['outbox']).toBe('')
      await phone.whileCutOff(() => tickAndSetOut(left))
      await page.goto('/')
      await page.getByRole('button', { name: 'Sign out', exact: true }).click()
      await page.getByRole('button', { name: 'Sign out all the same' }).click()
      await expect(page.getByRole('heading', { name: 'You are not signed in here' })).toBeVisible()
      await expectNoNames(page, EVERYBODY)
      const kept = await phoneKeeps(page)
      expect([kept['kits'], kept['evenings']]).toEqual(['', ''])
      expect(kept['outbox']).toContain('keep-plan')
      await phone.whileRefused(401, async () => {
        // As the browser does when somebody goes back to a page that it has kept as it stood.
        await left.evaluate(() => window.dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true })))
        await expect(left.getByText('Nobody is signed in on this phone.')).toBeVisible()
        await expect(left.getByText('2 things not sent yet wait here for whoever wrote them to sign in')).toBeVisible()
      })
      await expectNoNames(left, EVERYBODY)
      await left.close()
    })

    test('another coach on the same phone sees none of the first one’s children', async () => {
      const { page } = phone
      await signIn(phone, await renewLink('otherCoach'))
      await openTonight(page, RIVER)
      await expectNamesKept(page, RIVER_SQUAD)
      await expectNoNames(page, SPARKS_SQUAD)
      await expect(page.getByText(/not sent yet wait here for whoever wrote them/)).toBeVisible()
      await phone.whileRefused(404, async () => {
        await page.goto(sparks)
        await expect(page.getByText('There is no such team, or you may not see it.')).toBeVisible()
      })
      await expectNoNames(page, SPARKS_SQUAD)
    })

    test('who signs in over somebody else starts from a phone without names, and what they left unsent goes', async () => {
      const { page } = phone
      expect((await phoneKeeps(page))['kits']).toContain(`"${RIVER_SQUAD[0]}"`)
      await signIn(phone, await renewLink('assistant'))
      await expectNoNames(page, EVERYBODY)
      await openTonight(page, SPARKS)
      await expectNamesKept(page, SPARKS_SQUAD)
      await expect.poll(async () => (await phoneKeeps(page))['outbox']).toBe('')
    })

    test('a team that is no longer theirs leaves the phone', async () => {
      const { page } = phone
      const hidden = await missingKit(phone, new URL(sparks).searchParams.get('club') ?? '')
      await page.route('**/kit', (route) =>
        route.fulfill({ status: 404, contentType: 'application/problem+json', body: hidden }),
      )
      await phone.whileRefused(404, async () => {
        await page.goto(sparks)
        await expect(page.getByText('There is no such team, or you may not see it.')).toBeVisible()
      })
      await page.unroute('**/kit')
      await expectNoNames(page, EVERYBODY)
      const kept = await phoneKeeps(page)
      expect([kept['kits'], kept['evenings']]).toEqual(['', ''])
    })

    test('a login that has ended takes the names off the phone', async () => {
      const { page } = phone
      await openTonight(page, SPARKS)
      await expectNamesKept(page, SPARKS_SQUAD)
      // A new link ends the logins made by the one before.
      await renewLink('assistant')
      await phone.whileRefused(401, async () => {
        await page.goto(sparks)
        await expect(page.getByText('Nobody is signed in on this phone.')).toBeVisible()
      })
      await expectNoNames(page, EVERYBODY)
    })

    test('names that nobody has refreshed for two weeks leave the phone, also without a signal', async () => {
      const { page } = phone
      await signIn(phone, await renewLink('assistant'))
      await openTonight(page, SPARKS)
      await expectNamesKept(page, SPARKS_SQUAD)
      await phone.whileCutOff(async () => {
        await ageKits(page, 13)
        await page.goto(sparks)
        await expectNamesKept(page, SPARKS_SQUAD)
        await ageKits(page, 14)
        await page.goto(sparks)
        await expect(page.getByText(/^No answer came from the club/)).toBeVisible()
        await expectNoNames(page, EVERYBODY)
      })
    })
  })
}

/** Presses through the report, as far as it goes. */
async function report(page: Page): Promise<void> {
  await page.getByRole('link', { name: /^Reported$/ }).click()
  await page.getByRole('group', { name: 'How far' }).getByText('Against poles').click()
  await page.getByRole('group', { name: 'How often' }).getByText('Sometimes').click()
  await page.getByRole('group', { name: 'Which adult' }).getByText('Nobody').click()
  await page.getByRole('button', { name: 'Send the report' }).click()
}

/** A tick that changes the plan, and the plan used: both are things to send. */
async function tickAndSetOut(page: Page): Promise<void> {
  await page.getByRole('button', { name: SPARKS_SQUAD[0], exact: true }).click()
  // The plan is made aside: until it is there, the one before it is still the one that is used.
  await expect(async () => {
    await page.getByRole('link', { name: 'Set out', exact: true }).click()
    const isWaiting = await page.getByText(/^2 things not sent yet/).isVisible()
    if (!isWaiting) await page.getByRole('link', { name: 'Tonight', exact: true }).click()
    expect(isWaiting).toBe(true)
  }).toPass({ timeout: 20_000 })
}

async function renewLink(role: 'assistant' | 'otherCoach'): Promise<string> {
  const administrator = visitors.get('administrator')
  if (administrator === undefined) throw new Error('the administrator has left')
  await goFromHome(administrator.page, 'People')
  const link = await newLink(administrator.page, PEOPLE[role])
  links.set(role, link)
  return link
}

/** The API's own words for a kit that is not there. */
async function missingKit(visitor: Visitor, club: string): Promise<string> {
  let body = ''
  await visitor.whileRefused(404, async () => {
    body = (await apiAnswer(visitor.page, `/v1/clubs/${club}/teams/${NOBODY}/kit`)).body
  })
  return JSON.stringify({ ...JSON.parse(body), instance: 'request' })
}
