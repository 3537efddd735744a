import { type ChildProcess, spawn } from 'node:child_process'
import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

const root = join(import.meta.dirname, '../..')

/** Ends what a run started when the run is gone. */
export const endWithParent = pathToFileURL(join(import.meta.dirname, 'end-with-parent.mjs')).href

/** Building is not counted on here: a test run builds first, and this then starts within seconds. */
const READY_MILLISECONDS = 240_000

/** Where a running Espalier is found; walks get it through the environment. */
export type Espalier = { readonly origin: string; readonly folder: string }

/** A one-time sign-in link of the demo club, with whose it is. */
export type DemoLink = { readonly role: string; readonly link: string }

export type StartedEspalier = Espalier & {
  readonly demoLinks: readonly DemoLink[]
  /** Stops it as Ctrl-C does, and takes its data away. */
  readonly stop: () => Promise<void>
}

/** Starts everything as `npm start` does, on a port and a data folder of its own. */
export async function startEspalier(): Promise<StartedEspalier> {
  const folder = mkdtempSync(join(tmpdir(), 'espalier-walks-'))
  // PostgreSQL runs as another user where the tests run as root, and must get in.
  chmodSync(folder, 0o755)
  const port = await freePort()
  const running = run('start.mjs', [], { folder, port })
  const stop = async () => {
    running.child.kill('SIGTERM')
    const code = await running.ended
    rmSync(folder, { recursive: true, force: true })
    if (code !== 0) throw new Error(`Espalier did not stop cleanly (${code}):\n${running.output()}`)
  }
  try {
    await running.says('Stop it with Ctrl-C')
  } catch (error) {
    running.child.kill('SIGTERM')
    await running.ended
    rmSync(folder, { recursive: true, force: true })
    throw error
  }
  return { origin: `http://127.0.0.1:${port}`, folder, demoLinks: demoLinksIn(running.output()), stop }
}

/** An empty club, made beside the running Espalier as an operator makes one; answers its administrator's link. */
export async function makeEmptyClub(
  { origin, folder }: Espalier,
  wish: { readonly name: string; readonly zone: string; readonly person: string },
): Promise<string> {
  const args = ['new', '--name', wish.name, '--zone', wish.zone, '--person', wish.person]
  const made = run('club.mjs', args, { folder, port: Number(new URL(origin).port) })
  const code = await made.ended
  const link = /https?:\S+\/sign-in#\S+/.exec(made.output())
  if (code !== 0 || link === null) throw new Error(`npm run club made nothing (${code}):\n${made.output()}`)
  return link[0]
}

type Place = { readonly folder: string; readonly port: number }

function run(program: string, args: readonly string[], { folder, port }: Place) {
  const child: ChildProcess = spawn(
    process.execPath,
    ['--import', endWithParent, join(root, 'apps/local', program), ...args],
    {
      env: { ...process.env, DATABASE_URL: '', ESPALIER_DATA: join(folder, 'data'), PORT: String(port) },
      stdio: ['pipe', 'pipe', 'pipe'],
    },
  )
  let text = ''
  const listeners = new Set<() => void>()
  const note = (chunk: Buffer) => {
    text += chunk.toString()
    for (const listen of listeners) listen()
  }
  child.stdout?.on('data', note)
  child.stderr?.on('data', note)
  const ended = new Promise<number | string>((resolve) => {
    child.on('close', (code, signal) => resolve(code ?? signal ?? 'unknown'))
  })
  const says = (words: string) =>
    new Promise<void>((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error(`Espalier is not ready:\n${text}`)), READY_MILLISECONDS)
      const look = () => {
        if (!text.includes(words)) return
        clearTimeout(timer)
        listeners.delete(look)
        resolve()
      }
      listeners.add(look)
      void ended.then((code) => {
        clearTimeout(timer)
        reject(new Error(`Espalier ended while starting (${code}):\n${text}`))
      })
      look()
    })
  return { child, ended, says, output: () => text }
}

function demoLinksIn(output: string): readonly DemoLink[] {
  return [...output.matchAll(/^ {2}(\S.*?)\s+(http:\S+\/sign-in#\S+)$/gm)].map(([, role, link]) => ({
    role: role ?? '',
    link: link ?? '',
  }))
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.on('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => (typeof address === 'object' && address !== null ? resolve(address.port) : reject(address)))
    })
  })
}
