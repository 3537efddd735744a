import { expect, type Page } from '@playwright/test'

/** What somebody gets who opens this address: status, title and all words of the page. */
export async function pageAnswer(page: Page, path: string): Promise<unknown> {
  const response = await page.goto(path)
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  const landed = new URL(page.url()).pathname
  return {
    status: response?.status(),
    isWhereAsked: landed === path,
    landed: landed === path ? null : landed,
    title: await page.title(),
    words: await page.getByRole('main').textContent(),
  }
}

/** The API's answer to a read from this browser, without what is new in every answer. */
export async function apiAnswer(page: Page, path: string): Promise<{ readonly status: number; readonly body: string }> {
  const answer = await page.evaluate(async (asked) => {
    const response = await fetch(asked, { headers: { accept: 'application/json' } })
    return { status: response.status, body: await response.text() }
  }, path)
  const { instance: _, ...rest } = JSON.parse(answer.body) as Record<string, unknown>
  return { status: answer.status, body: JSON.stringify(rest) }
}

/** An id that nothing has, in the shape of all others. */
export const NOBODY = '0199c0de-0000-7000-8000-00000000dead'

export const THERE_IS_NO_SUCH_PAGE = 'There is no such page, or you may not see it'
