import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

// How long a person waits for "ready" on a built checkout: with an empty data folder (cluster, migrations, demo club)
// and with one that is there already. Installing and building are not counted: they happen once a change.

const root = fileURLToPath(new URL('../../', import.meta.url))
const PATIENCE_MILLISECONDS = 180_000
const GOAL_AGAIN_SECONDS = 5

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.on('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 0))
    })
  })
}

type Running = { readonly seconds: number; readonly stop: () => Promise<void> }

function start(folder: string, port: number): Promise<Running> {
  const startedAt = performance.now()
  const child = spawn(process.execPath, [join(root, 'apps/local/start.mjs')], {
    cwd: root,
    env: { ...process.env, PORT: String(port), ESPALIER_DATA: folder },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  return new Promise((resolve, reject) => {
    const patience = setTimeout(() => reject(new Error('not ready in time')), PATIENCE_MILLISECONDS)
    child.once('exit', (code) => reject(new Error(`ended with ${code} before it was ready`)))
    child.stdout.on('data', (chunk: Buffer) => {
      if (!chunk.toString().includes('is ready')) return
      clearTimeout(patience)
      child.removeAllListeners('exit')
      resolve({ seconds: (performance.now() - startedAt) / 1000, stop: () => stop(child) })
    })
  })
}

function stop(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    child.once('exit', () => resolve())
    child.kill('SIGTERM')
  })
}

function print(figure: string, seconds: number, goal: number | null): void {
  const value = Number(seconds.toFixed(2))
  console.log(JSON.stringify({ figure, value, unit: 's', floor: null, ratio: null, goal }))
}

const folder = mkdtempSync(join(tmpdir(), 'espalier-start-'))
try {
  const first = await start(folder, await freePort())
  await first.stop()
  print('start.first', first.seconds, null)
  const again = await start(folder, await freePort())
  await again.stop()
  print('start.again', again.seconds, GOAL_AGAIN_SECONDS)
} finally {
  rmSync(folder, { recursive: true, force: true })
}
