import { expect, test } from '@playwright/test'
import { PHONE, visit } from '../visitor'
import { apiAnswer, NOBODY, pageAnswer, THERE_IS_NO_SUCH_PAGE } from './hidden'
import { RIVER, SPARKS } from './invented'
import { arrive, visitors } from './story'

/** What nobody may learn: other teams, and the club itself. */
export function walkHidden(): void {
  test.describe('whoever may not know gets the answer for a missing thing', () => {
    test('an assistant finds their own team and no other', async ({ browser }) => {
      const assistant = await arrive(browser, 'assistant', PHONE)
      const { page } = assistant
      await expect(page.getByRole('link', { name: `Tonight with ${SPARKS}` })).toBeVisible()
      await expect(page.getByRole('main')).not.toContainText(RIVER)
      const [sparks, river] = [teamOf('coach'), teamOf('otherCoach')]
      await page.goto(`/clubs/${sparks.club}/teams`)
      await expect(page.getByRole('main')).toContainText(SPARKS)
      await expect(page.getByRole('main')).not.toContainText(RIVER)
      await assistant.whileRefused(404, async () => {
        const missing = await pageAnswer(page, `/clubs/${sparks.club}/teams/${NOBODY}`)
        expect(missing).toMatchObject({ status: 404, words: expect.stringContaining(THERE_IS_NO_SUCH_PAGE) })
        for (const path of ['', '/squad']) {
          expect(await pageAnswer(page, `/clubs/${sparks.club}/teams/${river.team}${path}`)).toEqual(missing)
        }
        expect(await pageAnswer(page, `/clubs/${sparks.club}/planned-and-done`)).toEqual(missing)
        expect(await apiAnswer(page, `/v1/clubs/${river.club}/teams/${river.team}/kit`)).toEqual(
          await apiAnswer(page, `/v1/clubs/${river.club}/teams/${NOBODY}/kit`),
        )
      })
      await assistant.lookAround()
    })

    test("another club's coach", async ({ browser }) => {
      const other = visitors.get('demo') ?? (await visit(browser, PHONE))
      const { page } = other
      const { club, team } = teamOf('coach')
      await other.whileRefused(404, async () => {
        for (const path of ['people', 'teams', `teams/${team}`, `teams/${team}/squad`, 'curricula', 'record-book']) {
          const missing = await pageAnswer(page, `/clubs/${NOBODY}/${path}`)
          expect(missing).toMatchObject({ status: 404, words: expect.stringContaining(THERE_IS_NO_SUCH_PAGE) })
          expect(await pageAnswer(page, `/clubs/${club}/${path}`), path).toEqual(missing)
        }
        for (const path of ['', '/people', `/teams/${team}/kit`, `/teams/${team}/squad`, '/ledger/head']) {
          const missing = await apiAnswer(page, `/v1/clubs/${NOBODY}${path}`)
          expect(missing.status).toBe(404)
          expect(await apiAnswer(page, `/v1/clubs/${club}${path}`), path).toEqual(missing)
        }
      })
    })

    test('a stranger', async ({ browser }) => {
      const stranger = await visit(browser, PHONE)
      visitors.set('stranger', stranger)
      const { page } = stranger
      const { club, team } = teamOf('coach')
      for (const path of ['people', `teams/${team}`, `teams/${team}/squad`]) {
        const missing = await pageAnswer(page, `/clubs/${NOBODY}/${path}`)
        expect(missing).toMatchObject({ words: expect.stringContaining('You are not signed in here') })
        expect(await pageAnswer(page, `/clubs/${club}/${path}`), path).toEqual(missing)
      }
      await stranger.whileRefused(401, async () => {
        expect(await apiAnswer(page, `/v1/clubs/${club}/teams/${team}/kit`)).toEqual(
          await apiAnswer(page, `/v1/clubs/${NOBODY}/teams/${NOBODY}/kit`),
        )
      })
      await stranger.lookAround()
    })
  })
}

/** The club and team of a coach, as their phone's address names them. */
function teamOf(role: 'coach' | 'otherCoach'): { readonly club: string; readonly team: string } {
  const query = new URL(visitors.get(role)?.page.url() ?? '').searchParams
  const [club, team] = [query.get('club'), query.get('team')]
  if (club === null || team === null) throw new Error(`${role} stands on no page of a team`)
  return { club, team }
}
