import { expect, test } from '@playwright/test'
import { sharedEspalier } from './espalier-of-walks'
import { axeFaults, cookieFaults, sidewaysPixels, visit } from './visitor'

// Each watch of the walks is shown one fault made on purpose: a watch that stays silent here proves nothing there.

test('axe sees a button without a name', async ({ browser }) => {
  const { page, context } = await visit(browser)
  await page.goto('/')
  expect(await axeFaults(page)).toEqual([])
  await page.evaluate(() => document.querySelector('main')?.append(document.createElement('button')))
  expect((await axeFaults(page)).map((fault) => fault.split(':')[0])).toContain('button-name')
  await context.close()
})

test('a page that is wider than its window is seen', async ({ browser }) => {
  const { page, context } = await visit(browser, { width: 360, height: 780 })
  await page.goto('/')
  expect(await sidewaysPixels(page)).toBe(0)
  await page.evaluate(() => {
    const wide = document.createElement('div')
    wide.style.width = '420px'
    wide.textContent = 'too wide'
    document.querySelector('main')?.append(wide)
  })
  expect(await sidewaysPixels(page)).toBeGreaterThan(0)
  await context.close()
})

test('a request to another origin is seen', async ({ browser }) => {
  const { page, context, faults } = await visit(browser)
  await page.goto('/')
  expect(faults).toEqual([])
  // The same server by another name is another origin.
  const other = sharedEspalier().origin.replace('127.0.0.1', 'localhost')
  await page.goto(other)
  expect(faults).toContain(`request to ${other}`)
  await context.close()
})

test('a broken content policy is seen, and the policy holds', async ({ browser }) => {
  const { page, context, faults } = await visit(browser)
  await page.goto('/')
  const colour = await page.evaluate(() => {
    document.body.setAttribute('style', 'color: rgb(1, 2, 3)')
    return getComputedStyle(document.body).color
  })
  expect(colour).not.toBe('rgb(1, 2, 3)')
  await expect.poll(() => faults.join('\n')).toContain('policy broken: style-src')
  await context.close()
})

test('an error on the console, a failing script and a failing answer are seen', async ({ browser }) => {
  const { page, context, faults } = await visit(browser)
  await page.goto('/')
  await page.evaluate(() => {
    console.error('made on purpose')
    setTimeout(() => {
      throw new Error('thrown on purpose')
    })
    return fetch('/v1/me')
  })
  await expect.poll(() => faults.join('\n')).toMatch(/made on purpose[\s\S]*401|401[\s\S]*made on purpose/)
  await expect.poll(() => faults.join('\n')).toContain('thrown on purpose')
  await context.close()
})

test('a weak cookie is seen, flag by flag', () => {
  const strong = '__Host-login=a; Path=/; Secure; HttpOnly; SameSite=Lax'
  expect(cookieFaults(strong)).toEqual([])
  for (const part of ['__Host-', '; Path=/', '; Secure', '; HttpOnly', '; SameSite=Lax']) {
    expect(cookieFaults(strong.replace(part, '')), `without ${part}`).toHaveLength(1)
  }
  expect(cookieFaults(`${strong}; Domain=club.test`)).toHaveLength(1)
})
