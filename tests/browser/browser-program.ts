import { existsSync } from 'node:fs'

const systemPrograms = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
] as const

/**
 * The browser of the tests: named by the environment, else the system's, else the one a package ships (Linux on x64).
 * Asked once, by the configuration.
 */
export async function findBrowserProgram(): Promise<string> {
  const named = process.env['ESPALIER_CHROMIUM']
  if (named !== undefined && named !== '') {
    if (!existsSync(named)) throw new Error(`ESPALIER_CHROMIUM names ${named}, which does not exist.`)
    return named
  }
  const system = systemPrograms.find((program) => existsSync(program))
  if (system !== undefined) return system
  // On a bare machine the packaged browser then unpacks the libraries it needs as well; read when it is imported.
  process.env['AWS_EXECUTION_ENV'] ??= 'AWS_Lambda_nodejs20.x'
  const { default: packaged } = await import('@sparticuz/chromium')
  return packaged.executablePath()
}

/** Keeps the browser from looking for hosts of its own, which a closed network refuses by the hundred. */
export const browserArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
] as const
