import { AxeBuilder } from '@axe-core/playwright'
import { type Browser, type BrowserContext, expect, type Page } from '@playwright/test'
import { sharedEspalier } from './espalier-of-walks'

export const PHONE = { width: 390, height: 844 } as const
export const DESK = { width: 1440, height: 900 } as const
const NARROW = { width: 360, height: 780 } as const

/** Success criteria of WCAG 2.2 up to AA; axe has no other tag for those of 2.2. */
const AXE_TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

type Size = { readonly width: number; readonly height: number }

/** Somebody with a browser of their own, watched for everything that a page must never do. */
export type Visitor = {
  readonly page: Page
  readonly context: BrowserContext
  /** What was seen amiss so far: errors on the console, broken policies, strange origins, weak cookies. */
  readonly faults: string[]
  /** Lets answers of this status be logged by the browser while something is refused on purpose. */
  readonly whileRefused: (status: number, act: () => Promise<void>) => Promise<void>
  /** Cuts the API off while the pages go on: a phone at the edge of its signal. */
  readonly whileCutOff: (act: () => Promise<void>) => Promise<void>
  /** Looks at the page as it stands now: axe at both sizes (all of it where they are laid out differently), and no sideways scroll on a narrow phone. */
  readonly lookAround: () => Promise<void>
  /** Red where anything was amiss. */
  readonly expectNoFaults: () => void
  readonly leave: () => Promise<void>
}

export async function visit(browser: Browser, size: Size = DESK): Promise<Visitor> {
  const { origin } = sharedEspalier()
  const context = await browser.newContext({ baseURL: origin, viewport: size, reducedMotion: 'reduce' })
  const faults: string[] = []
  const refused = new Set<number>()
  let refusals = 0
  let isCutOff = false
  // A broken policy is an event of the page; on the console it cannot be overlooked.
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => {
      console.error(`policy broken: ${event.effectiveDirective} ${event.blockedURI}`)
    })
  })
  context.on('console', (message) => {
    if (message.type() !== 'error') return
    const status = /responded with a status of (\d{3})/.exec(message.text())?.[1]
    if (status !== undefined && refused.has(Number(status))) refusals += 1
    else if (isCutOff && message.text().includes('ERR_INTERNET_DISCONNECTED')) return
    else faults.push(`console: ${message.text()} (${message.location().url})`)
  })
  context.on('weberror', (error) => faults.push(`script: ${error.error().message}`))
  watchOrigins(context, origin, faults)
  const cookies = watchCookies(context, faults)
  const page = await context.newPage()
  return {
    page,
    context,
    faults,
    whileRefused: async (status, act) => {
      const before = refusals
      refused.add(status)
      await act()
      await expect.poll(() => refusals, { message: `something is refused with ${status}` }).toBeGreaterThan(before)
      refused.delete(status)
    },
    whileCutOff: async (act) => {
      isCutOff = true
      await withoutApi(context, act)
      isCutOff = false
    },
    lookAround: async () => {
      faults.push(...(await lookAround(page, size)))
    },
    expectNoFaults: () => expect(faults).toEqual([]),
    leave: async () => {
      await Promise.all(cookies)
      await context.close()
      expect(faults).toEqual([])
    },
  }
}

/** No answer comes from the API, as where there is no signal. */
async function withoutApi(context: BrowserContext, act: () => Promise<void>): Promise<void> {
  await context.route('**/v1/**', (route) => route.abort('internetdisconnected'))
  await act()
  await context.unroute('**/v1/**')
}

function watchOrigins(context: BrowserContext, origin: string, faults: string[]): void {
  context.on('request', (request) => {
    const url = new URL(request.url())
    if (url.protocol === 'data:' || url.protocol === 'blob:') return
    if (url.origin !== origin) faults.push(`request to ${url.origin}`)
  })
}

/** Every cookie that is set belongs to this origin alone, and no script and no other site gets at it. */
function watchCookies(context: BrowserContext, faults: string[]): Promise<void>[] {
  const reading: Promise<void>[] = []
  context.on('response', (response) => {
    if (!response.url().includes('/v1/')) return
    const read = response
      .headerValues('set-cookie')
      .then((set) => {
        for (const cookie of set) faults.push(...cookieFaults(cookie))
      })
      // The page left before the answer was read.
      .catch(() => undefined)
    reading.push(read)
  })
  return reading
}

export function cookieFaults(cookie: string): readonly string[] {
  const [pair = '', ...rest] = cookie.split(';').map((part) => part.trim())
  const flags = rest.map((part) => part.toLowerCase())
  const wrong = [
    pair.startsWith('__Host-') ? null : 'its name does not begin with __Host-',
    ...['secure', 'httponly', 'samesite=lax', 'path=/'].map((flag) => (flags.includes(flag) ? null : `lacks ${flag}`)),
    flags.some((flag) => flag.startsWith('domain=')) ? 'names a domain' : null,
  ]
  return wrong.filter((each) => each !== null).map((each) => `cookie ${pair.split('=')[0]}: ${each}`)
}

async function lookAround(page: Page, size: Size): Promise<readonly string[]> {
  const where = new URL(page.url()).pathname
  // The size it is used at first: most pages are looked at where they stand.
  const other = size.width === DESK.width ? PHONE : DESK
  const faults = (await axeFaults(page)).map((fault) => `axe at ${size.width} on ${where}: ${fault}`)
  const layout = await layoutOf(page)
  await page.setViewportSize(other)
  // Laid out alike, all that another width can change is how near things come to each other and what scrolls.
  const rules = (await layoutOf(page)) === layout ? RULES_OF_WIDTH : undefined
  faults.push(...(await axeFaults(page, rules)).map((fault) => `axe at ${other.width} on ${where}: ${fault}`))
  await page.setViewportSize(NARROW)
  const sideways = await sidewaysPixels(page)
  if (sideways > 0) faults.push(`${where} scrolls ${sideways} px sideways at ${NARROW.width}`)
  await page.setViewportSize(size)
  return faults
}

/** Rules of axe whose answer depends on where things come to stand, not only on what they are and look like. */
const RULES_OF_WIDTH = ['target-size', 'scrollable-region-focusable'] as const

/** How every element is shown and what it stands on, as text: two widths with the same answer are laid out alike. */
export function layoutOf(page: Page): Promise<string> {
  return page.evaluate(() => {
    const said = [...document.body.querySelectorAll('*')].map((element) => {
      const { display, position, visibility, opacity, flexDirection, color, backgroundColor, fontSize, fontWeight } =
        getComputedStyle(element)
      return [
        display,
        position,
        visibility,
        opacity,
        flexDirection,
        color,
        backgroundColor,
        fontSize,
        fontWeight,
      ].join()
    })
    return said.join('\n')
  })
}

/** What axe finds against WCAG 2.2 AA, or by these of its rules, one line for each element. */
export async function axeFaults(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  // No page has a frame, so axe needs none of the second page that it else opens to gather what frames say.
  const builder = new AxeBuilder({ page }).setLegacyMode(true)
  const wished = rules === undefined ? builder.withTags([...AXE_TAGS]) : builder.withRules([...rules])
  const { violations } = await wished.analyze()
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 200)}`))
}

/** By how many pixels the page is wider than its window. */
export function sidewaysPixels(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
}

/** Opens a one-time link and presses sign in. */
export async function signIn({ page }: Visitor, link: string): Promise<void> {
  await page.goto(link)
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'Where to?' })).toBeVisible()
}
