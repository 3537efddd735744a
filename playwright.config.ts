import { defineConfig } from '@playwright/test'
import { browserArguments, findBrowserProgram } from './tests/browser/browser-program'

const program = await findBrowserProgram()

// Walks start their own Espalier (tests/browser/start-espalier.ts): from an empty club, on an own data folder and port.
export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.walk.ts',
  globalSetup: './tests/browser/espalier-of-walks.ts',
  fullyParallel: false,
  workers: 1,
  timeout: 120_000,
  expect: { timeout: 10_000 },
  forbidOnly: true,
  retries: 0,
  use: {
    launchOptions: { executablePath: program, args: [...browserArguments] },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    // What was done and the page at each step; filming every window as well costs a third of the time on two cores.
    trace: { mode: 'retain-on-failure', screenshots: false, sources: false },
  },
})
