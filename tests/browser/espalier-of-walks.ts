import { type DemoLink, type Espalier, startEspalier } from './start-espalier'

const VARIABLE = 'ESPALIER_OF_WALKS'

/** Playwright's global setup: one Espalier for all walks, gone when they end. */
// biome-ignore lint/style/noDefaultExport: Playwright takes its global setup from the default export.
export default async function shareEspalier(): Promise<() => Promise<void>> {
  const { origin, folder, demoLinks, stop } = await startEspalier()
  process.env[VARIABLE] = JSON.stringify({ origin, folder, demoLinks })
  return async () => {
    delete process.env[VARIABLE]
    await stop()
  }
}

/** The Espalier that this run shares, as a walk sees it. */
export function sharedEspalier(): Espalier & { readonly demoLinks: readonly DemoLink[] } {
  const text = process.env[VARIABLE]
  if (text === undefined) throw new Error('No Espalier is shared: walks run through playwright.config.ts.')
  return JSON.parse(text)
}

/** The unused link of a demo role. Each works once in a run. */
export function demoLink(role: string): string {
  const found = sharedEspalier().demoLinks.find((each) => each.role.startsWith(role))
  if (found === undefined) throw new Error(`The demo club printed no link for ${role}.`)
  return found.link
}
