// Database, API and pages on one machine, until somebody says stop.
import { randomBytes } from 'node:crypto'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { databaseEnvironment, migrateDatabase, openDatabase } from './database.mjs'
import { freePort, refuseTakenPort } from './ports.mjs'
import { runProgram, startProgram } from './programs.mjs'
import { AlreadyRunningError, removeNote, takeLock, writeNote } from './running.mjs'

const READY_SECONDS = 60

/**
 * @param {{ root: string, folder: string, port: number, databaseUrl: string | null, trustedProxies: string | null, development: boolean }} wish
 * `programs` is replaced by tests of the launcher itself.
 */
export async function launch({
  root,
  folder,
  port,
  databaseUrl,
  trustedProxies,
  development,
  programs = programsOf(root, development),
}) {
  await refuseTakenPort(port)
  const interruption = new AbortController()
  const interrupted = listenForSignals(interruption)
  const stops = []
  try {
    const address = `http://127.0.0.1:${port}`
    const wish = { root, folder, port, databaseUrl, trustedProxies, programs, address, stops }
    const { children, links } = await startEverything({ ...wish, signal: interruption.signal })
    console.log(`\nEspalier is ready: ${address}\n`)
    if (links) console.log(`${links.trim()}\n`)
    console.log('Stop it with Ctrl-C.')
    await Promise.race([interrupted, failureOf(children)])
  } catch (error) {
    if (!interruption.signal.aborted) throw error
  } finally {
    for (const stop of stops.reverse()) await stop().catch((error) => console.error(error.message))
  }
}

/** Each thing that was started adds its own end to `stops`; the last one started is the first to stop. */
async function startEverything({ root, folder, port, databaseUrl, trustedProxies, programs, address, stops, signal }) {
  const database = await openDatabase({ folder, databaseUrl })
  const lock = await takeLock(database.ownerUrl, folder).catch(async (error) => {
    // Whoever holds the lock needs the server; without a holder nobody does.
    if (!(error instanceof AlreadyRunningError)) await database.stop()
    throw error
  })
  stops.push(database.stop, lock.release)
  signal.throwIfAborted()
  const start = (program, env) => {
    const child = startProgram({ cwd: root, ...program, env, logFolder: join(folder, 'logs') })
    stops.push(child.stop)
    return child
  }
  const webPort = await freePort()
  // Of this start alone: by it the API knows a question of the pages, and counts it for whoever looks at them.
  const shared = { ESPALIER_WEB_KEY: randomBytes(32).toString('base64url') }
  const web = start(programs.web(webPort), { ...shared, ESPALIER_API_ORIGIN: address, NEXT_TELEMETRY_DISABLED: '1' })
  await migrateDatabase(root, database, signal)
  const common = databaseEnvironment(database, address)
  const webOrigin = `http://127.0.0.1:${webPort}`
  const api = start(programs.api, {
    ...common,
    ...shared,
    ...(trustedProxies === null ? {} : { ESPALIER_TRUSTED_PROXIES: trustedProxies }),
    HOST: '127.0.0.1',
    PORT: String(port),
    ESPALIER_WEB_ORIGIN: webOrigin,
  })
  writeNote(folder, { pid: process.pid, address })
  stops.push(async () => removeNote(folder))
  const children = [api, web]
  const [links] = await Promise.all([
    programs.demo ? runProgram({ ...programs.demo, cwd: root, env: common, signal }) : '',
    waitUntilReady(`${address}/readyz`, children, signal),
    waitUntilReady(webOrigin, children, signal),
  ])
  return { children, links }
}

function programsOf(root, development) {
  const pages = join(root, 'apps/web')
  const next = createRequire(join(pages, 'package.json')).resolve('next/dist/bin/next')
  const where = (port) => ['-H', '127.0.0.1', '-p', String(port)]
  return {
    // In its own folder, because Next looks there for what its configuration imports.
    web: (port) => ({
      name: 'web',
      entry: next,
      args: [development ? 'dev' : 'start', ...where(port)],
      cwd: pages,
      development,
    }),
    api: { name: 'api', entry: join(root, 'apps/api/dist/main.js') },
    demo: { name: 'Making the demo club', entry: join(root, 'apps/api/dist/demo.js') },
  }
}

/** Any answer below 500 will do: what a page shows is not ours to judge. */
async function waitUntilReady(url, children, signal) {
  const deadline = Date.now() + READY_SECONDS * 1_000
  while (Date.now() < deadline) {
    signal.throwIfAborted()
    const gone = children.find((child) => !child.isRunning())
    if (gone) throw new Error(`The ${gone.name} ended while starting:\n${gone.tail()}`)
    const answer = await fetch(url, { redirect: 'manual', signal: AbortSignal.timeout(5_000) }).catch(() => null)
    if (answer && answer.status < 500) return
    await pause(50)
  }
  throw new Error(
    `${url} did not answer within ${READY_SECONDS} s:\n${children.map((child) => child.tail()).join('\n')}`,
  )
}

async function failureOf(children) {
  const { child, how } = await Promise.race(children.map((child) => child.ended.then((how) => ({ child, how }))))
  throw new Error(`The ${child.name} ended by itself (${how}):\n${child.tail()}`)
}

/** The first signal asks for the stop; later ones change nothing, because it is under way. */
function listenForSignals(interruption) {
  return new Promise((resolve) => {
    const stop = () => {
      if (interruption.signal.aborted) return
      console.log('\nStopping …')
      interruption.abort(new Error('stopped'))
      resolve('stopped')
    }
    process.on('SIGINT', stop)
    process.on('SIGTERM', stop)
  })
}
