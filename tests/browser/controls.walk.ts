import { type ChildProcess, spawn } from 'node:child_process'
import { expect, test } from '@playwright/test'
import { sharedEspalier } from './espalier-of-walks'
import { endWithParent } from './start-espalier'
import { axeFaults, cookieFaults, DESK, layoutOf, PHONE, sidewaysPixels, visit } from './visitor'

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

/** A run that starts one thing, as the walks start Espalier, and is killed in the midst of it; answers whether that lives on. */
async function outlivesItsRun(preload: readonly string[]): Promise<boolean> {
  const started = [
    '-e',
    "process.on('SIGTERM', () => process.exit()); process.stdout.write(String(process.pid)); setTimeout(() => 0, 6e4)",
  ]
  const words = JSON.stringify([...preload, ...started])
  const program = `require('node:child_process').spawn(process.execPath, ${words}, { stdio: ['pipe', 'inherit', 'inherit'] })`
  const parent: ChildProcess = spawn(process.execPath, ['-e', program], { stdio: ['ignore', 'pipe', 'inherit'] })
  const child = await new Promise<number>((resolve) => parent.stdout?.once('data', (text) => resolve(Number(text))))
  const isThere = () => {
    try {
      return process.kill(child, 0)
    } catch {
      return false
    }
  }
  expect(isThere()).toBe(true)
  parent.kill('SIGKILL')
  try {
    await expect.poll(isThere, { timeout: 3000 }).toBe(false)
    return false
  } catch {
    process.kill(child, 'SIGKILL')
    return true
  }
}

test('what a killed run has started ends with it; without the pipe it would stay', async () => {
  expect(await outlivesItsRun(['--import', endWithParent])).toBe(false)
  expect(await outlivesItsRun([])).toBe(true)
})

test('a page that is laid out otherwise at the desk is told from one that is not', async ({ browser }) => {
  const { page, context } = await visit(browser)
  await page.goto('/')
  const rule = (text: string) =>
    page.evaluate((css) => {
      const sheet = new CSSStyleSheet()
      sheet.replaceSync(css)
      document.adoptedStyleSheets = [sheet]
    }, text)
  const layouts = async () => {
    const looks: string[] = []
    for (const size of [PHONE, DESK]) {
      await page.setViewportSize(size)
      looks.push(await layoutOf(page))
    }
    return looks
  }
  await rule('')
  const [phone, desk] = await layouts()
  expect(phone).toBe(desk)
  await rule('@media (min-width: 60rem) { main { display: grid; } }')
  const [narrow, wide] = await layouts()
  expect(narrow).not.toBe(wide)
  await context.close()
})
